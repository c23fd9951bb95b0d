/** A field that takes the file of a notebook, a strip or a set-up in, read as the build reads it. */
import type { Opened } from "../lazy/reader/open-file.ts";
import { readerPart } from "../lazy/reader/reader-part.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";

type Kind = Exclude<Opened["kind"], "report">;

/** A thing of a kind, without a problem. */
type OpenedThing<Of extends Kind> = Extract<Opened, { readonly kind: Of }>;

interface Opening<Of extends Kind> {
  /** What the page shows; a file of anything else is sent to its own page. */
  readonly kind: Of;
  readonly load: (name: string) => Promise<void>;
  readonly say: (words: string) => void;
  /** The slugs that a strip may carry. */
  readonly carried: () => ReadonlySet<string>;
  readonly take: (opened: OpenedThing<Of>) => void;
}

const KIND_WORDS: Readonly<Record<Kind, string>> = {
  notebook: "notebook",
  strip: "strip",
  setup: "set-up",
};

/** What is wrong with a file is shown as the build reports it. */
export function bindFileField<Of extends Kind>(page: Document, opening: Opening<Of>): void {
  const field = theOne(page, "#open-file", HTMLInputElement);
  field.addEventListener("change", () => {
    const picked = field.files?.[0];
    if (picked) void openPicked(page, picked, opening).finally(() => (field.value = ""));
  });
}

async function openPicked<Of extends Kind>(
  page: Document,
  picked: File,
  { kind, load, say, carried, take }: Opening<Of>,
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
    const words = KIND_WORDS[opened.kind];
    if (!isOf(opened, kind))
      return show(`This is the file of a ${words}. Open it on the page of your ${words}.`);
    take(opened);
    say(`The ${words} of ${picked.name} is shown now.`);
  } catch (error) {
    console.error(error);
    show("The file could not be read: a part of this page is missing.");
  }
}

function isOf<Of extends Kind>(opened: Opened, kind: Of): opened is OpenedThing<Of> {
  return opened.kind === kind;
}
