/** The buttons that print, save and copy what the page shows. */
import { stripScene } from "../../../src/draw/strip/strip-scene.ts";
import { writeNotebook } from "../../../src/notebook/write-notebook.ts";
import { planJson } from "../../../src/plan/plan-json.ts";
import { stripJsonText } from "../../../src/strip/strip-json.ts";
import { spanFileName } from "../../../src/view/pattern/span-words.ts";
import { type Printer, pagePrintOut, stripPrintOut, stripTitle } from "../app/print.ts";
import { printPart } from "../lazy/print/print-part.ts";
import { readerPart } from "../lazy/reader/reader-part.ts";
import { disableButtons } from "../ui/disable-buttons.ts";
import { onPress, theOne } from "../ui/parts.ts";
import { openPrinting } from "../ui/print-drawings.ts";
import { saveFile } from "../ui/save-file.ts";
import type { Draw } from "../ui/show-drawing.ts";
import { whileBusy } from "../ui/while-busy.ts";
import { type FitPageState, type FitStore, type FormName, titledRecipe } from "./fit-store.ts";
import { shownScene } from "./show-pattern.ts";
import { isCarried, toggleCarried } from "./strip-lists.ts";

export interface Saving {
  readonly draw: Draw;
  readonly printer: () => Printer;
  readonly load: (name: string) => Promise<void>;
  readonly say: (words: string) => void;
}

/** Names of files tell pattern, notebook, days and strip, as the build's downloads do. */
export function bindSaving(page: Document, store: FitStore, saving: Saving): void {
  const { draw, printer } = saving;
  const press = (doing: string, act: (state: FitPageState, button: HTMLElement) => void) =>
    onPress(page, doing, (button) => act(store.state(), button));
  press("strip", ({ fit }) => store.update({ strip: toggleCarried(fit.strip, fit.pattern) }));
  store.subscribe(({ fit }) => showCarried(page, isCarried(fit.strip, fit.pattern)));
  // The browser's own command prints what the page's own button does.
  const print = openPrinting(window, () => pagePrintOut(titled(store.state()), printer(), draw));
  press("print-page", (state) => print(pagePrintOut(titled(state), printer(), draw)));
  press("save-page-svg", (state) => saveFile(pageName(state), "svg", draw.file(shownScene(state))));
  press("save-plan", (state) => saveFile(pageName(state), "json", planJson(state.plan)));
  press("save-page-pdf", (state, button) => savePagePdf(state, button, saving));
  press("print-strip", ({ strip }) => print(stripPrintOut(strip, printer(), draw)));
  press("save-strip-svg", (state) =>
    saveFile(stripName(state), "svg", draw.file(stripScene(state.strip))),
  );
  press("save-strip-json", (state) =>
    saveFile(stripName(state), "json", stripJsonText(state.strip)),
  );
  press("save-strip-pdf", (state, button) => saveStripPdf(state, button, saving));
  press("save-notebook", ({ notebook }) => saveFile(notebook.slug, "md", writeNotebook(notebook)));
  press("save-strip", (state, button) => saveStrip(state, button, saving));
}

/** The button says in words what it does, so that nobody has to go by its looks. */
function showCarried(page: Document, isOn: boolean): void {
  for (const button of page.querySelectorAll<HTMLElement>('[data-do="strip"]')) {
    button.textContent = isOn ? "Take it off the strip" : "Put it on the strip";
  }
}

/** What is printed has its days in its title. */
function titled(state: FitPageState): FitPageState {
  return { ...state, recipe: titledRecipe(state) };
}

function pageName({ recipe, notebook, when: { span } }: FitPageState): string {
  return `${recipe.slug}-${notebook.slug}${span ? `-${spanFileName(span)}` : ""}`;
}

/** The strip of one pattern alone is named after it, and must not look like its page. */
function stripName(state: FitPageState): string {
  const { strip, recipe } = state;
  return strip.slug === recipe.slug
    ? `${pageName(state)}-strip`
    : `${strip.slug}-${strip.notebook.slug}`;
}

function savePagePdf(
  state: FitPageState,
  button: HTMLElement,
  { load, printer, say }: Saving,
): void {
  const { plan, notebook } = state;
  const recipe = titledRecipe(state);
  if (!plan.fits) {
    say("There is no page to save: the pattern does not fit this notebook.");
    return;
  }
  void whileBusy(button, say, async () => {
    const part = await printPart(window, load);
    const pdf = await part.pagePdf({ plan, recipe, notebook }, printer().correction);
    saveFile(pageName(state), "pdf", new Uint8Array(pdf));
  });
}

function saveStripPdf(
  state: FitPageState,
  button: HTMLElement,
  { load, printer, say }: Saving,
): void {
  const { strip } = state;
  void whileBusy(button, say, async () => {
    const part = await printPart(window, load);
    const { paper, correction } = printer();
    const pdf = await part.stripPdf(
      { title: stripTitle(strip), strips: [strip], paper },
      correction,
    );
    saveFile(stripName(state), "pdf", new Uint8Array(pdf));
  });
}

function saveStrip(
  { stripRecipe }: FitPageState,
  button: HTMLElement,
  { load, say }: Saving,
): void {
  void whileBusy(button, say, async () => {
    const { writeStripRecipe } = await readerPart(window, load);
    saveFile(stripRecipe.slug, "md", writeStripRecipe(stripRecipe));
  });
}

/** The part of the page that each form is. */
const FORM_PARTS = {
  notebook: "notebook",
  dates: "dates",
  strip: "strip-fields",
  printer: "printer",
} as const satisfies Readonly<Record<FormName, string>>;

/** Holds and frees the buttons of each form as its faults come and go; `say` tells who pressed one what it waits for. */
export function bindDisabling(page: Document, store: FitStore, say: (words: string) => void): void {
  const disable = disableButtons(page, say);
  const formOf = (name: FormName) =>
    theOne(page, `[data-part="${FORM_PARTS[name]}"]`, HTMLFormElement);
  store.subscribe(({ errors }) => {
    disable(formOf("notebook"), errors.notebook);
    disable(formOf("dates"), errors.dates);
    disable(formOf("strip"), errors.strip);
    disable(formOf("printer"), errors.printer);
  });
}
