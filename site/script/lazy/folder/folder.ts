/** The part that reads, packs and opens kept things: loaded by the page that lists them, since YAML and its checks are large. */
import "../reader/without-eval.ts";
import { reportIssues } from "../../../../src/issue/report/report.ts";
import { sayIssue } from "../../../../src/issue/words/say-issue.ts";
import { sayZipFault } from "../../../../src/issue/words/say-zip-fault.ts";
import { retyped } from "../../../../src/recipe/retype.ts";
import { openCatalogue } from "../../../../src/view/catalogue.ts";
import { contentFolder, writeZip } from "../../../../src/view/kept/content-folder.ts";
import { KEPT_KINDS, type KeptFile } from "../../../../src/view/kept/kept-file.ts";
import { meetKept } from "../../../../src/view/kept/meet-kept.ts";
import { readContentFiles, readTitle } from "../../../../src/view/kept/read-content-files.ts";
import { copiedFile, renamedTogether } from "../../../../src/view/kept/rename-file.ts";
import { type PickedFile, sortFiles } from "../../../../src/view/kept/sort-files.ts";
import type { Device } from "../../device/device.ts";
import { keptFiles } from "../../device/kept-files.ts";
import type { FolderBook, FolderPart, Opened } from "./folder-part.ts";
import { bookSetups, keptLayouts, keptSetups } from "./kept-setups.ts";
import { keptViews, ownNotebook } from "./kept-views.ts";

function allFiles(device: Device): readonly KeptFile[] {
  return KEPT_KINDS.flatMap((kind) => keptFiles(device, kind));
}

function retitled(file: KeptFile, title: string): KeptFile | string {
  const text = retyped(file.text, { title });
  const reading = readTitle({ ...file, text });
  if (reading.ok) return { ...file, text };
  const [issue] = reading.issues;
  return issue ? sayIssue(issue).sentence.replaceAll("`", "") : "";
}

function open(picked: readonly PickedFile[], { book, texts, device }: FolderBook): Opened {
  const sorted = sortFiles(picked);
  const kept = allFiles(device);
  const content = readContentFiles(sorted.files, { book: openCatalogue(book), kept });
  const issues = [...sorted.issues, ...content.issues];
  const written = new Map<string, string>(sorted.files.map(({ path, text }) => [path, text]));
  const refusals = sorted.refused.map(({ name, fault }) => {
    const { sentence, hint } = sayZipFault(fault);
    return [name, sentence, ...(hint ? [hint] : [])].join("\n  ");
  });
  return {
    ...meetKept(content.files, { kept, texts }),
    reports: [...refusals, ...(issues.length > 0 ? [reportIssues(issues, written)] : [])],
    ignored: sorted.ignored,
  };
}

function zip(around: FolderBook): ReturnType<FolderPart["zip"]> {
  const catalogue = openCatalogue(around.book);
  const views = keptViews(around);
  const { files, leftOut } = contentFolder({
    files: views.map(({ file }) => file),
    notebook: ownNotebook(around.device, catalogue),
    pattern: catalogue.recipes[0]?.slug ?? "",
    texts: around.texts,
    ...(around.book?.when && { when: around.book.when }),
    ...(catalogue.utcOffset !== undefined && { utcOffset: catalogue.utcOffset }),
  });
  const titleAt = (path: string) => views.find(({ file }) => file.path === path)?.title ?? path;
  return { bytes: writeZip(files), leftOut: leftOut.map(({ path }) => titleAt(path)) };
}

const part: FolderPart = {
  ...{ views: keptViews, retitled, copiedFile, renamedTogether, open, zip },
  ...{ setups: keptSetups, bookSetups, layouts: keptLayouts },
};

Object.assign(window, { spanbookFolder: part });
