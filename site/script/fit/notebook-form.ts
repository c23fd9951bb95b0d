/** The notebook's fields on the page: every key press is read, and what is not valid is said at its field. */
import { AXES } from "../../../src/measure/axis.ts";
import { toMm } from "../../../src/measure/length.ts";
import { centredDot } from "../../../src/notebook/centred-dot.ts";
import { isPaperName, PAPERS } from "../../../src/notebook/paper.ts";
import { isSameGrid, unnamed } from "../../../src/view/fields/name-notebook.ts";
import {
  AXIS_FIELDS,
  FIELD_NAMES,
  fieldsOf,
  type NotebookFields,
  OWN_PAPER,
} from "../../../src/view/fields/notebook-fields.ts";
import { readFields, type UnnamedNotebook } from "../../../src/view/fields/read-notebook-fields.ts";
import { fieldOf, fillForm, readForm, showErrors, writeAttribute } from "../ui/form.ts";
import { partOf, theOne } from "../ui/parts.ts";
import type { FitPageState, FitStore } from "./fit-store.ts";

/** Keeps the form and the page the same. */
export function bindNotebookForm(page: ParentNode, store: FitStore): void {
  const form = theOne(page, '[data-part="notebook"]', HTMLFormElement);
  /** What the form said last; anything else on the page came from elsewhere and is put into the form. */
  let own: UnnamedNotebook | undefined;
  store.subscribe((state) => {
    if (state.fit.notebook !== own) {
      own = state.fit.notebook;
      fillForm(form, { ...fieldsOf(own), ...sizeTexts(own) });
      showErrors(form, []);
    }
    showAround(form, state, store);
  });
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("input", (event) => {
    if (event.target === fieldOf(form, "start")) return startFrom(form, store);
    const fields = completed(form, readForm(form, FIELD_NAMES));
    showSize(form, fields);
    const reading = readFields(fields);
    showErrors(form, reading.ok ? [] : reading.issues);
    if (!reading.ok) return store.setErrors("notebook", reading.issues);
    own = { ...reading.value, body: own?.body ?? "" };
    store.update({ notebook: own });
  });
}

/** A notebook of the book in place of what is filled in; its name comes with it. */
function startFrom(form: HTMLFormElement, store: FitStore): void {
  const slug = fieldOf(form, "start").value;
  const notebook = store.catalogue.notebooks.find((one) => one.slug === slug);
  if (!notebook) return;
  store.update({ notebook: unnamed(notebook) });
}

/** Paper that loses its name keeps its size, so that there is something to change. */
function completed(form: HTMLFormElement, fields: NotebookFields): NotebookFields {
  if (!isPaperName(fields.paper)) return fields;
  const [width, height] = PAPERS[fields.paper];
  const size = { width: `${width}`, height: `${height}` };
  fillForm(form, size);
  return { ...fields, ...size };
}

function sizeTexts({ axes }: UnnamedNotebook): Pick<NotebookFields, "width" | "height"> {
  return { width: `${toMm(axes.across.paper)}`, height: `${toMm(axes.down.paper)}` };
}

/** What follows the fields: where they may be left empty, the size's fields, the book's notebook that this is. */
function showAround(
  form: HTMLFormElement,
  { fit, notebook, errors }: FitPageState,
  { catalogue }: FitStore,
): void {
  showSize(form, fieldsOf(fit.notebook));
  for (const axis of AXES) {
    const field = fieldOf(form, AXIS_FIELDS[axis].firstDot);
    const words =
      errors.notebook.length > 0 ? "centred" : `${toMm(centredDot(notebook.axes[axis]))}, centred`;
    writeAttribute(field, "placeholder", words);
  }
  writeAttribute(fieldOf(form, "title"), "placeholder", notebook.title);
  writeAttribute(fieldOf(form, "slug"), "placeholder", notebook.slug);
  const twin = catalogue.notebooks.find((one) => isSameGrid(fit.notebook, one));
  fillForm(form, { start: twin?.slug ?? "" });
}

function showSize(form: HTMLFormElement, { paper }: NotebookFields): void {
  writeAttribute(partOf(form, "size"), "hidden", paper === OWN_PAPER ? undefined : "");
}
