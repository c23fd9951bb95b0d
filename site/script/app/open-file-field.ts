/** A field that takes the file of a notebook or of a strip in, read as the build reads it. */
import type { Opened } from "../lazy/reader/open-file.ts";
import { readerPart } from "../lazy/reader/reader-part.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";

/** A notebook or a strip without a problem. */
export type OpenedThing = Exclude<Opened, { readonly kind: "report" }>;

interface Opening {
  readonly load: (name: string) => Promise<void>;
  readonly say: (words: string) => void;
  /** The slugs that a strip may carry. */
  readonly carried: () => ReadonlySet<string>;
  /** Shows the thing and gives what is said then; or a fault where it belongs on another page. */
  readonly take: (
    opened: OpenedThing,
    name: string,
  ) => { readonly said: string } | { readonly fault: string };
}

/** What is wrong with a file is shown as the build reports it. */
export function bindFileField(page: Document, opening: Opening): void {
  const field = theOne(page, "#open-file", HTMLInputElement);
  field.addEventListener("change", () => {
    const picked = field.files?.[0];
    if (picked) void openPicked(page, picked, opening).finally(() => (field.value = ""));
  });
}

async function openPicked(
  page: Document,
  picked: File,
  { load, say, carried, take }: Opening,
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
    const opened = reader.openedFile({ name: picked.name, bytes }, carried());
    if (opened.kind === "report") return show(opened.report);
    const outcome = take(opened, picked.name);
    if ("fault" in outcome) show(outcome.fault);
    else say(outcome.said);
  } catch (error) {
    console.error(error);
    show("The file could not be read: a part of this page is missing.");
  }
}
