/** The recipe page: puts its parts together. */
import { openCatalogue } from "../../../src/view/catalogue.ts";
import { keptPath } from "../../../src/view/kept/kept-file.ts";
import { bindAddToStrip } from "../app/add-to-strip.ts";
import { bindDates } from "../app/bind-dates.ts";
import { openDevice } from "../device/device.ts";
import { keptPaper, keptPrinter } from "../device/kept-printer.ts";
import { addToMyStrip } from "../device/my-strip.ts";
import { bindDrawAlong } from "../draw-along/along-plan.ts";
import { type Editor, plainEditor } from "../lazy/editor/editor-part.ts";
import { readerPart } from "../lazy/reader/reader-part.ts";
import { keepParts } from "../offline/prefetch-scripts.ts";
import { disableButtons } from "../ui/disable-buttons.ts";
import { openQueue } from "../ui/idle-queue.ts";
import { ownAddress, scriptLoader } from "../ui/load-script.ts";
import { enhancePart, partOf, theOne } from "../ui/parts.ts";
import { openDraw } from "../ui/show-drawing.ts";
import { openStatus } from "../ui/status.ts";
import { bindRecipePrinting } from "./bind-printing.ts";
import { bindRecipeAddress } from "./bind-recipe-address.ts";
import { bindRecipeSaving } from "./bind-saving.ts";
import { initialRecipe, needsTexts, recipeTexts } from "./initial-recipe.ts";
import { bindKeepLayout } from "./keep-layout.ts";
import { bindRecipeForm } from "./recipe-form.ts";
import { datesOf, openRecipeStore, plansOf } from "./recipe-store.ts";
import { bindFaultyDates, recipeView } from "./show-recipe.ts";

const script = ownAddress();
const load = scriptLoader(script);
void openPage().catch((error: unknown) => {
  console.error(error);
  const notice = partOf(document, "notice");
  notice.textContent = "The recipe could not be opened: a part of this page is missing.";
  notice.hidden = false;
  for (const part of document.querySelectorAll<HTMLElement>("[data-enhance]")) part.hidden = true;
});

async function openPage(): Promise<void> {
  const catalogue = openCatalogue(window.spanbookContent);
  const texts = () => recipeTexts(window, load);
  const reader = await readerPart(window, load);
  const device = openDevice(window, script);
  const written = needsTexts(location.hash, catalogue) ? await texts() : {};
  const start = initialRecipe(location.hash, { device, catalogue, texts: written });
  const store = openRecipeStore(start.draft, catalogue, reader);
  const [draw, queue, say] = [openDraw(window), openQueue(window), openStatus(document)];
  const field = theOne(document, "#recipe-text", HTMLTextAreaElement);
  const changed = () => store.update({ text: editor.text() });
  let editor: Editor = plainEditor(field, changed);
  for (const name of ["recipe", "print-part", "keep-part"]) enhancePart(document, name);
  const own = (slug: string) => device.get(keptPath("patterns", slug));
  const keep = bindKeepLayout(document, store, { device, reader, say });
  bindAddToStrip(document, () => {
    const slug = keep();
    return slug === undefined ? undefined : addToMyStrip(device, { across: slug, down: slug });
  });
  const disable = disableButtons(document, say);
  bindRecipeForm(document, store, { texts, say, own, disable });
  store.subscribe(({ draft }) => {
    if (editor.text() !== draft.text) editor.setText(draft.text);
  });
  bindDates(window, datesOf(store), { load, say });
  const show = recipeView(document, { draw, queue, reader, editor: () => editor });
  store.subscribe(({ result }) => show(result));
  bindFaultyDates(document, store, disable);
  bindDrawAlong(window, plansOf(store), { queue, device });
  bindRecipeSaving(document, store, { draw, say });
  const printer = () => ({ paper: keptPaper(device), correction: keptPrinter(device) });
  bindRecipePrinting(document, store, { draw, say, load, printer });
  bindRecipeAddress(window, store, { device, start, texts });
  keepParts(window, script, [
    "reader.js",
    "editor.js",
    "names.js",
    "moon.js",
    "print.js",
    "single-strip.js",
    "../fit/recipe/texts.js",
  ]);
  // The plain field serves until then, and for good where the editor cannot be loaded.
  await load("editor.js").catch(() => undefined);
  if (!window.spanbookEditor) return;
  editor = window.spanbookEditor.openEditor(field, changed);
  show(store.state().result);
}
