/** Opens the file of a strip in the page, read as the build reads it. */
import { readerPart } from "../lazy/reader/reader-part.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";
import type { StripStore } from "./strip-store.ts";

interface Opening {
  readonly load: (name: string) => Promise<void>;
  readonly say: (words: string) => void;
}

/** Takes files in; what is wrong with one is shown as the build reports it. */
export function bindStripFile(page: Document, store: StripStore, opening: Opening): void {
  const field = theOne(page, "#open-file", HTMLInputElement);
  field.addEventListener("change", () => {
    const picked = field.files?.[0];
    if (picked) void openPicked(page, picked, store, opening).finally(() => (field.value = ""));
  });
}

async function openPicked(
  page: Document,
  picked: File,
  store: StripStore,
  { load, say }: Opening,
): Promise<void> {
  const faults = partOf(page, "file-faults");
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
    if (opened.kind === "notebook")
      return show("This is the file of a notebook. Open it on the page of your notebook.");
    store.update({ strip: opened.strip });
    say(`The strip of ${picked.name} is shown now.`);
  } catch (error) {
    console.error(error);
    show("The file could not be read: a part of this page is missing.");
  }
}
