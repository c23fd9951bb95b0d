/** The buttons that print, save and send the strip. */
import { stripScene } from "../../../src/draw/strip/strip-scene.ts";
import { stripJsonText } from "../../../src/strip/strip-json.ts";
import { writeStripAddress } from "../../../src/view/address/strip-address.ts";
import { printPart } from "../lazy/print/print-part.ts";
import { readerPart } from "../lazy/reader/reader-part.ts";
import { copyLink } from "../ui/copy-link.ts";
import { disableButtons } from "../ui/disable-buttons.ts";
import type { Printer } from "../ui/paper-page.ts";
import { onPress, theOne } from "../ui/parts.ts";
import { openPrinting } from "../ui/print-drawings.ts";
import { saveFile } from "../ui/save-file.ts";
import type { Draw } from "../ui/show-drawing.ts";
import { stripPrintOut, stripTitle } from "../ui/strip-print-out.ts";
import { whileBusy } from "../ui/while-busy.ts";
import { isBare, type StripState, type StripStore } from "./strip-store.ts";

export interface Saving {
  readonly draw: Draw;
  readonly printer: () => Printer;
  readonly load: (name: string) => Promise<void>;
  readonly say: (words: string) => void;
}

/** Names of files tell strip and notebook, as the build's downloads do. */
export function bindSaving(page: Document, store: StripStore, saving: Saving): void {
  const { draw, printer, load, say } = saving;
  const press = (doing: string, act: (state: StripState, button: HTMLElement) => void) =>
    onPress(page, doing, (button) => {
      if (isBare(store.state())) say("Put something on your strip first.");
      else act(store.state(), button);
    });
  // The browser's own command prints what the page's own button does.
  const print = openPrinting(window, () => stripPrintOut(store.state().strip, printer(), draw));
  press("print-strip", ({ strip }) => print(stripPrintOut(strip, printer(), draw)));
  press("save-strip-svg", (state) =>
    saveFile(fileName(state), "svg", draw.file(stripScene(state.strip))),
  );
  press("save-strip-json", (state) =>
    saveFile(fileName(state), "json", stripJsonText(state.strip)),
  );
  press(
    "save-strip-pdf",
    ({ strip, ...state }, button) =>
      void whileBusy(button, say, async () => {
        const part = await printPart(window, load);
        const { paper, correction } = printer();
        const question = { title: stripTitle(strip), strips: [strip], paper };
        const pdf = await part.stripPdf(question, correction);
        saveFile(fileName({ strip, ...state }), "pdf", new Uint8Array(pdf));
      }),
  );
  press(
    "save-strip",
    ({ recipe }, button) =>
      void whileBusy(button, say, async () => {
        const { writeStripRecipe } = await readerPart(window, load);
        saveFile(recipe.slug, "md", writeStripRecipe(recipe));
      }),
  );
  const link = theOne(page, "#link", HTMLInputElement);
  store.subscribe(({ asked }) => {
    link.value = new URL(writeStripAddress(asked), page.location.href).href;
  });
  onPress(page, "copy-link", () => void copyLink(link, say));
}

function fileName({ strip }: Pick<StripState, "strip">): string {
  return `${strip.slug}-${strip.notebook.slug}`;
}

/** Holds and frees the buttons of each form as its faults come and go; `say` tells who pressed one what it waits for. */
export function bindDisabling(
  page: Document,
  store: StripStore,
  say: (words: string) => void,
): void {
  const disable = disableButtons(page, say);
  const formOf = (part: string) => theOne(page, `[data-part="${part}"]`, HTMLFormElement);
  store.subscribe(({ errors }) => {
    disable(formOf("carried"), errors.carried);
    disable(formOf("strip-fields"), errors.fields);
    disable(formOf("printer"), errors.printer);
  });
}
