/** The test sheet as a file, and measuring its bars from a photo: brought when somebody opens that part of the page. */
import type { Device } from "../device/device.ts";
import { keepPaper, keptPaper } from "../device/kept-printer.ts";
import { barsPart } from "../lazy/bars/bars-part.ts";
import { printPart } from "../lazy/print/print-part.ts";
import { onPress, partOf, theOne } from "../ui/parts.ts";
import { saveFile } from "../ui/save-file.ts";
import { whileBusy } from "../ui/while-busy.ts";

interface Brings {
  readonly device: Device;
  readonly load: (name: string) => Promise<void>;
  readonly say: (words: string) => void;
}

/** What is measured is filled into the fields of the bars, as if it were typed. */
export function bindBarsPhoto(window: Window, { device, load, say }: Brings): void {
  const { document } = window;
  const help = partOf(document, "bars-photo");
  const form = theOne(document, '[data-part="bars"]', HTMLFormElement);
  const bring = () => {
    help.removeEventListener("toggle", bring);
    barsPart(window, load).then(
      (part) => part.open({ place: partOf(help, "photo-work"), form, say }),
      () => {
        help.addEventListener("toggle", bring);
        say("Measuring from a photo could not be loaded: a part of this page is missing.");
      },
    );
  };
  help.addEventListener("toggle", bring);
  const sheet = theOne(help, "#test-paper", HTMLSelectElement);
  const paper = () => (sheet.value === "letter" ? "letter" : "A4");
  const show = () => (sheet.value = keptPaper(device));
  show();
  device.subscribe("printer", show);
  sheet.addEventListener("change", () => keepPaper(device, paper()));
  onPress(document, "save-test-sheet", (button) => {
    void whileBusy(button, say, async () => {
      const part = await printPart(window, load);
      saveFile(`test-sheet-${paper()}`, "pdf", new Uint8Array(await part.testSheetPdf(paper())));
    });
  });
}
