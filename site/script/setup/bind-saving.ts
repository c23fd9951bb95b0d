/** The buttons that print, save, send and keep the set-up, and the one that goes on to the next. */

import { NO_STRETCH } from "../../../src/print/printer-correction.ts";
import type { SetupRecipe } from "../../../src/recipe/setup-recipe.ts";
import { writeSetupRecipe } from "../../../src/recipe/write-setup-recipe.ts";
import { nextSetup } from "../../../src/setup/next-setup.ts";
import type { Setup } from "../../../src/setup/setup.ts";
import { setupJson } from "../../../src/setup/setup-json.ts";
import { LONGEST_ADDRESS } from "../../../src/view/address/hash-params.ts";
import { writeSetupAddress } from "../../../src/view/address/setup-address.ts";
import { nameSetup } from "../../../src/view/fields/setup-fields.ts";
import { withoutEmptyBlocks } from "../../../src/view/setup/edit-setup.ts";
import type { Device } from "../device/device.ts";
import { printPart } from "../lazy/print/print-part.ts";
import { setupStripPart } from "../lazy/setup-strip/setup-strip-part.ts";
import { copyLink } from "../ui/copy-link.ts";
import { disableButtons } from "../ui/disable-buttons.ts";
import type { Queue } from "../ui/idle-queue.ts";
import type { Printer } from "../ui/paper-page.ts";
import { onPress, partOf, theOne } from "../ui/parts.ts";
import { openPrinting } from "../ui/print-drawings.ts";
import { saveFile } from "../ui/save-file.ts";
import type { Draw } from "../ui/show-drawing.ts";
import { whileBusy } from "../ui/while-busy.ts";
import { keepSetup } from "./keep-setup.ts";
import type { SetupState, SetupStore } from "./setup-store.ts";
import type { Pictured } from "./show-spreads.ts";

export interface Saving {
  readonly device: Device;
  readonly draw: Draw;
  readonly queue: Queue;
  /** Are its pages drawn by now, with these events? */
  readonly isDrawn: (pictured: Pictured) => boolean;
  readonly printer: () => Printer;
  readonly load: (name: string) => Promise<void>;
  readonly say: (words: string) => void;
}

interface Worked extends SetupState {
  readonly setup: Setup;
}

/** Names of files tell set-up and notebook, as the build's downloads do. */
export function bindSaving(page: Document, store: SetupStore, saving: Saving): void {
  const { draw, printer, load, say, queue, isDrawn } = saving;
  const press = openPresses(page, store, say);
  const print = openPrinting(window);
  press("print-setup", ({ setup }) =>
    queue.put("print", () => {
      const state = store.state();
      if (state.setup !== setup) return false;
      if (!isDrawn(state)) return true;
      window.print();
      return false;
    }),
  );
  press(
    "print-strip",
    ({ setup, notebook }) =>
      void setupStripPart(window, load).then(
        (part) => print(part.stripPrintOut(part.setupStrip(setup, notebook), printer(), draw)),
        () => say("The strip could not be printed: a part of this page is missing."),
      ),
  );
  press(
    "save-pages-pdf",
    ({ setup, notebook, events }, button) =>
      void whileBusy(button, say, async () => {
        const part = await printPart(window, load);
        const pdf = await part.setupPdf({ setup, notebook, events }, NO_STRETCH);
        saveFile(fileName(setup), "pdf", new Uint8Array(pdf));
      }),
  );
  press(
    "save-strip-pdf",
    ({ setup, notebook }, button) =>
      void whileBusy(button, say, async () => {
        const [part, its] = await Promise.all([
          printPart(window, load),
          setupStripPart(window, load),
        ]);
        const { paper, correction } = printer();
        const strip = its.setupStrip(setup, notebook);
        const question = { title: its.stripTitle(strip), strips: [strip], paper };
        const pdf = await part.stripPdf(question, correction);
        saveFile(`${fileName(setup)}-strip`, "pdf", new Uint8Array(pdf));
      }),
  );
  press("save-setup-json", ({ setup }) => saveFile(fileName(setup), "json", setupJson(setup)));
  press("save-setup", ({ recipe }) => saveFile(recipe.slug, "md", writeSetupRecipe(whole(recipe))));
  bindKeeping(store, press, saving);
  bindLink(page, store, say);
}

const WHY_NOT = "Add a layout first, and correct what is wrong in the fields.";

/** What is pressed while the pages are worked out is done as soon as they are. */
function openPresses(page: Document, store: SetupStore, say: Saving["say"]): Press {
  let waiting: ((state: Worked) => void) | undefined;
  store.subscribe((state) => {
    const { setup, question } = state;
    const act = waiting;
    if (setup || !question) waiting = undefined;
    if (setup) act?.({ ...state, setup });
  });
  return (doing, act) =>
    onPress(page, doing, (button) => {
      const state = store.state();
      const { setup, question } = state;
      if (setup) act({ ...state, setup }, button);
      else if (question) waiting = (worked) => act(worked, button);
      else say(WHY_NOT);
    });
}

type Press = (doing: string, act: (state: Worked, button: HTMLElement) => void) => void;

/** What is gone on from is kept, so that no month is lost. */
function bindKeeping(store: SetupStore, press: Press, { device, say }: Saving): void {
  const keep = ({ recipe }: Worked) => keepSetup(device, whole(recipe));
  press("keep-setup", (state) => say(`“${state.recipe.title}” is ${keep(state)}.`));
  press("next-setup", (state) => {
    const next = nextSetup(state.recipe, state.setup.pages.length);
    if (!next) return say("The calendar, or the numbers of pages, end here.");
    const kept = keep(state);
    store.update({ setup: next });
    const { title } = nameSetup(next, [], state.when.rule);
    say(`“${state.recipe.title}” is ${kept}. This is ${title}, from page ${next.first} on.`);
    window.scrollTo({ top: 0 });
  });
  store.subscribe(({ setup, when }) => {
    const next = setup && nextSetup(setup.recipe, setup.pages.length);
    const words = partOf(document, "next-words");
    if (next)
      words.textContent = `Next: ${nameSetup(next, [], when.rule).title}, from page ${next.first}`;
    else if (setup) words.textContent = "Next";
  });
}

function bindLink(page: Document, store: SetupStore, say: Saving["say"]): void {
  const link = theOne(page, "#link", HTMLInputElement);
  store.subscribe(({ asked, packed }) => {
    const address = writeSetupAddress({ ...asked, own: packed });
    link.value = new URL(address, page.location.href).href;
  });
  onPress(page, "copy-link", () => {
    if (new URL(link.value).hash.length > LONGEST_ADDRESS)
      say("It is too long for a link: save its file instead.");
    else void copyLink(link, say);
  });
}

function whole(recipe: SetupRecipe): SetupRecipe {
  return { ...recipe, pages: withoutEmptyBlocks(recipe.pages) };
}

function fileName({ recipe, notebook }: Setup): string {
  return `${recipe.slug}-${notebook.slug}`;
}

/** Holds and frees the buttons of each form as its faults come and go; `say` tells who pressed one what it waits for. */
export function bindDisabling(page: Document, store: SetupStore, say: Saving["say"]): void {
  const disable = disableButtons(page, say);
  const formOf = (part: string) => theOne(page, `[data-part="${part}"]`, HTMLFormElement);
  store.subscribe(({ errors }) => {
    disable(formOf("pages"), errors.pages);
    disable(formOf("dates"), errors.dates);
    disable(formOf("setup-fields"), errors.fields);
    disable(formOf("printer"), errors.printer);
  });
}
