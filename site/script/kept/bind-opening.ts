/** Takes in files and zips that are picked or dropped, and asks where another thing has the same name. */
import { slugOf } from "../../../src/source/slug.ts";
import {
  KEPT_KINDS,
  type KeptFile,
  type KeptKind,
  kindOf,
} from "../../../src/view/kept/kept-file.ts";
import type { Clash } from "../../../src/view/kept/meet-kept.ts";
import type { ContentFile } from "../../../src/view/kept/read-content-files.ts";
import { keptSlugs } from "../device/kept-files.ts";
import type { FolderBook, Opened } from "../lazy/folder/folder-part.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";
import { type Answer, askClashes } from "./ask-clashes.ts";
import type { Listing } from "./kept-list.ts";

interface Opening extends Listing {
  readonly show: () => void;
}

/** Files by the field, and by dropping them anywhere. */
export function bindOpening(page: Document, opening: Opening): void {
  const field = theOne(page, "#open-files", HTMLInputElement);
  field.addEventListener("change", () => {
    const picked = [...(field.files ?? [])];
    if (picked.length > 0) void open(page, picked, opening).finally(() => (field.value = ""));
  });
  page.addEventListener("dragover", (event) => {
    event.preventDefault();
    page.body.classList.add("dropping");
  });
  page.addEventListener("dragleave", () => page.body.classList.remove("dropping"));
  page.addEventListener("drop", (event) => {
    event.preventDefault();
    page.body.classList.remove("dropping");
    const dropped = [...(event.dataTransfer?.files ?? [])];
    if (dropped.length > 0) void open(page, dropped, opening);
  });
}

/** A zip may be larger than one file of content; none of either is read whole if it is far too large. */
const MOST_BYTES = 21 * 1024 * 1024;
const MOST_PICKED = 1_000;

async function open(page: Document, picked: readonly File[], opening: Opening): Promise<void> {
  const { part, around } = opening;
  showReports(page, []);
  partOf(page, "clashes").hidden = true;
  if (picked.length > MOST_PICKED)
    return showReports(page, ["These are more than 1,000 files at once: pack them as a zip."]);
  try {
    const files = await Promise.all(
      picked.map(async (file) => ({
        name: file.name,
        bytes: new Uint8Array(await file.slice(0, MOST_BYTES).arrayBuffer()),
      })),
    );
    const opened = part.open(files, around);
    take(page, opened, opening);
  } catch (error) {
    console.error(error);
    showReports(page, ["This cannot be read. Drop files or a zip, not a folder."]);
  }
}

function take(page: Document, opened: Opened, opening: Opening): void {
  const { fresh, known, clashes, ignored } = opened;
  const rest =
    ignored.length === 0
      ? []
      : [
          `Not of a book, and left alone: ${ignored.slice(0, MOST_NAMED).join(", ")}${ignored.length > MOST_NAMED ? " …" : ""}`,
        ];
  showReports(page, [...opened.reports, ...rest]);
  const finish = (files: readonly KeptFile[]) => {
    keep(files, opening);
    opening.show();
    opening.say(words(files.length, known.length));
  };
  if (clashes.length === 0) {
    finish(fresh);
    return;
  }
  askClashes(partOf(page, "clashes"), clashes, (answers) => {
    finish(answered(fresh, answers, opening));
    page.querySelector<HTMLElement>("#patterns")?.focus();
  });
}

const MOST_NAMED = 12;

/** What is to be kept, under the names that it is to have. */
function answered(
  fresh: readonly ContentFile[],
  answers: ReadonlyMap<Clash, Answer>,
  { part, around }: Opening,
): readonly KeptFile[] {
  const of = (answer: Answer) =>
    [...answers].filter(([, given]) => given === answer).map(([{ file }]) => file);
  const both = of("both");
  return part.renamedTogether([...fresh, ...of("replace"), ...both], both, taken(fresh, around));
}

function taken(
  fresh: readonly KeptFile[],
  { device, texts }: FolderBook,
): Readonly<Partial<Record<KeptKind, readonly string[]>>> {
  return Object.fromEntries(
    KEPT_KINDS.map((kind) => [
      kind,
      [
        ...keptSlugs(device, kind),
        ...fresh.filter(({ path }) => kindOf(path) === kind).map(({ path }) => slugOf(path)),
        ...(kind === "patterns" ? Object.keys(texts) : []),
      ],
    ]),
  );
}

function keep(files: readonly KeptFile[], { around }: Opening): void {
  for (const { path, text } of files) around.device.set(path, text);
}

function words(count: number, known: number): string {
  const kept = count === 1 ? "1 thing is kept now." : `${count} things are kept now.`;
  return known === 0 ? kept : `${kept} ${known} were here already.`;
}

function showReports(page: Document, reports: readonly string[]): void {
  const place = partOf(page, "reports");
  place.replaceChildren(...reports.map((report) => makeElement("pre", {}, report)));
  place.hidden = reports.length === 0;
}
