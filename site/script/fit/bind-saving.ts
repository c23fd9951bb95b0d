/** The buttons that print, save and copy what the page shows. */
import { writeNotebook } from "../../../src/notebook/write-notebook.ts";
import { planJson } from "../../../src/plan/plan-json.ts";
import { spanFileName, titledRecipe } from "../../../src/view/pattern/span-words.ts";
import { pagePrintOut } from "../app/print.ts";
import { printPart } from "../lazy/print/print-part.ts";
import { disableButtons } from "../ui/disable-buttons.ts";
import type { Printer } from "../ui/paper-page.ts";
import { onPress, theOne } from "../ui/parts.ts";
import { openPrinting } from "../ui/print-drawings.ts";
import { saveFile } from "../ui/save-file.ts";
import type { Draw } from "../ui/show-drawing.ts";
import { whileBusy } from "../ui/while-busy.ts";
import type { FitPageState, FitStore, FormName } from "./fit-store.ts";
import { shownScene } from "./show-pattern.ts";

export interface Saving {
  readonly draw: Draw;
  readonly printer: () => Printer;
  readonly load: (name: string) => Promise<void>;
  readonly say: (words: string) => void;
}

/** Names of files tell pattern, notebook and days, as the build's downloads do. */
export function bindSaving(page: Document, store: FitStore, saving: Saving): void {
  const { draw, printer } = saving;
  const press = (doing: string, act: (state: FitPageState, button: HTMLElement) => void) =>
    onPress(page, doing, (button) => act(store.state(), button));
  // The browser's own command prints what the page's own button does.
  const print = openPrinting(window, () => pagePrintOut(titled(store.state()), printer(), draw));
  press("print-page", (state) => print(pagePrintOut(titled(state), printer(), draw)));
  press("save-page-svg", (state) => saveFile(pageName(state), "svg", draw.file(shownScene(state))));
  press("save-plan", (state) => saveFile(pageName(state), "json", planJson(state.plan)));
  press("save-page-pdf", (state, button) => savePagePdf(state, button, saving));
  press("save-notebook", ({ notebook }) => saveFile(notebook.slug, "md", writeNotebook(notebook)));
}

/** What is printed has its days in its title. */
function titled(state: FitPageState): FitPageState {
  return { ...state, recipe: titledRecipe(state) };
}

function pageName({ recipe, notebook, when: { span } }: FitPageState): string {
  return `${recipe.slug}-${notebook.slug}${span ? `-${spanFileName(span)}` : ""}`;
}

function savePagePdf(
  state: FitPageState,
  button: HTMLElement,
  { load, printer, say }: Saving,
): void {
  const { plan, notebook, events } = state;
  const recipe = titledRecipe(state);
  if (!plan.fits) {
    say("There is no page to save: the pattern does not fit this notebook.");
    return;
  }
  void whileBusy(button, say, async () => {
    const part = await printPart(window, load);
    const pdf = await part.pagePdf({ plan, recipe, notebook, events }, printer().correction);
    saveFile(pageName(state), "pdf", new Uint8Array(pdf));
  });
}

/** The part of the page that each form is. */
const FORM_PARTS = {
  notebook: "notebook",
  dates: "dates",
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
    disable(formOf("printer"), errors.printer);
  });
}
