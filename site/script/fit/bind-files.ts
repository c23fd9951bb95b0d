/** The link to the page, and opening a file. */
import { writeFitAddress } from "../../../src/view/address/fit-address.ts";
import { readerPart } from "../lazy/reader/reader-part.ts";
import { copyLink } from "../ui/copy-link.ts";
import { makeElement } from "../ui/make-element.ts";
import { onPress, partOf, theOne } from "../ui/parts.ts";
import type { FitStore } from "./fit-store.ts";

interface Keeping {
  readonly load: (name: string) => Promise<void>;
  readonly say: (words: string) => void;
}

/** Keeps the link current, and takes files in. */
export function bindKeeping(page: Document, store: FitStore, keeping: Keeping): void {
  const link = theOne(page, "#link", HTMLInputElement);
  const file = theOne(page, "#open-file", HTMLInputElement);
  store.subscribe(({ fit }) => {
    link.value = new URL(writeFitAddress(fit), page.location.href).href;
  });
  onPress(page, "copy-link", () => void copyLink(link, keeping.say));
  file.addEventListener("change", () => {
    const picked = file.files?.[0];
    if (picked) void openFile(picked, store, keeping).finally(() => (file.value = ""));
  });
}

async function openFile(picked: File, store: FitStore, { load, say }: Keeping): Promise<void> {
  const faults = partOf(document, "file-faults");
  const show = (report: string) => {
    faults.replaceChildren(...(report === "" ? [] : [makeElement("pre", {}, report)]));
    faults.hidden = report === "";
  };
  show("");
  try {
    const reader = await readerPart(window, load);
    const bytes = new Uint8Array(await picked.arrayBuffer());
    const opened = reader.openedFile({ name: picked.name, bytes }, store.catalogue.carried);
    if (opened.kind === "report") return show(opened.report);
    if (opened.kind === "notebook") store.update({ notebook: opened.notebook });
    else return show("This is the file of a strip. Open it on the page of your strip.");
    say(`The notebook of ${picked.name} is shown now.`);
  } catch (error) {
    console.error(error);
    show("The file could not be read: a part of this page is missing.");
  }
}
