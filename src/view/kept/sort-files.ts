/** Sorts what somebody picked, files or a zipped folder, into the files of a content folder. */
import type { Issue } from "../../issue/facts/issue.ts";
import type { ZipFault } from "../../issue/facts/zip-fault.ts";
import { utf8Text } from "../../source/front-matter/utf8-text.ts";
import { isSlug, slugFrom } from "../../source/slug.ts";
import { slugFor } from "../fields/slug-for.ts";
import { asKeptPath, KEPT_KINDS, type KeptFile, type KeptKind, keptPath } from "./kept-file.ts";
import { readZip } from "./read-zip.ts";

/** A file as a browser hands it over. */
export interface PickedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

export interface SortedFiles {
  readonly files: readonly KeptFile[];
  readonly issues: readonly Issue[];
  /** Zip files of which nothing is taken. */
  readonly refused: readonly { readonly name: string; readonly fault: ZipFault }[];
  /** Names of what is none of a content folder's. */
  readonly ignored: readonly string[];
}

/** The build refuses larger files, too. */
const MOST_KIB = 256;

/** Zips are opened by how they begin; every other file goes by what it says. */
export function sortFiles(picked: readonly PickedFile[]): SortedFiles {
  const sorted = picked.map((file) => (isZip(file) ? ofZip(file) : ofFile(file)));
  return {
    files: sorted.flatMap(({ files }) => files),
    issues: sorted.flatMap(({ issues }) => issues),
    refused: sorted.flatMap(({ refused }) => refused),
    ignored: sorted.flatMap(({ ignored }) => ignored),
  };
}

const NONE: SortedFiles = { files: [], issues: [], refused: [], ignored: [] };

function isZip({ name, bytes }: PickedFile): boolean {
  return /\.zip$/i.test(name) || (bytes[0] === 0x50 && bytes[1] === 0x4b);
}

function ofZip({ name, bytes }: PickedFile): SortedFiles {
  const reading = readZip(bytes, (entry) => placeOf(entry) !== undefined);
  if (!reading.ok) return { ...NONE, refused: [{ name, fault: reading.fault }] };
  const read = reading.files.map((file) => {
    const place = placeOf(file.name) ?? { kind: "patterns", file: file.name };
    const path = asKeptPath(`${place.kind}/${place.file}`);
    if (!path) return { ...NONE, issues: [badName(`${place.kind}/${place.file}`, place.file)] };
    return withText({ name: path, bytes: file.bytes }, () => path);
  });
  const ignored = reading.others.filter((one) => !isUsual(one));
  return {
    files: read.flatMap(({ files }) => files),
    issues: read.flatMap(({ issues }) => issues),
    refused: [],
    ignored,
  };
}

/** A file in one of the content's folders, which may lie in one folder more; only files that were meant are read. */
function placeOf(name: string): { readonly kind: KeptKind; readonly file: string } | undefined {
  const [, folder, file] = /^(?:[^/]+\/)?([a-z]+)\/([^/]+\.(?:md|markdown|txt))$/i.exec(name) ?? [];
  const kind = KEPT_KINDS.find((one) => one === folder);
  return kind && file !== undefined && !file.startsWith(".") && !name.startsWith("__MACOSX/")
    ? { kind, file }
    : undefined;
}

/** What a content folder has beside, and what programs leave in a zip. */
function isUsual(name: string): boolean {
  return /(?:^|\/)(?:book\.ya?ml|\.[^/]*)$|^__MACOSX\//.test(name);
}

function ofFile(file: PickedFile): SortedFiles {
  const slug = slugFor(file.name.replace(/^.*[\\/]|\.[^.]*$/g, ""), {
    fallback: "file",
    taken: [],
  });
  return withText(file, (text) => keptPath(kindIn(text), slug));
}

/** What a file is shows in its keys: only a notebook has paper and dots, only a set-up has pages. */
function kindIn(text: string): KeptKind {
  const says = (keys: string) => new RegExp(`^(?:${keys})[ \\t]*:`, "m").test(text);
  if (says("page|spread")) return "patterns";
  if (says("pages")) return "setups";
  if (says("paper|dots")) return "notebooks";
  return says("across|down") ? "strips" : "patterns";
}

function withText(
  { name, bytes }: PickedFile,
  pathOf: (text: string) => KeptFile["path"],
): SortedFiles {
  const at = { file: name, line: 1, column: 1, width: 0 };
  if (bytes.length > MOST_KIB * 1024)
    return { ...NONE, issues: [{ about: "file", kind: "too-large", limitKib: MOST_KIB, at }] };
  const read = utf8Text(bytes);
  if (read.ok) return { ...NONE, files: [{ path: pathOf(read.text), text: read.text }] };
  const { line, column } = read;
  return {
    ...NONE,
    issues: [{ about: "file", kind: "not-utf8", at: { ...at, line, column, width: 1 } }],
  };
}

function badName(path: string, name: string): Issue {
  const better = slugFrom(name);
  return {
    about: "file",
    kind: "bad-name",
    name,
    ...(isSlug(better) && { better: `${better}.md` }),
    at: { file: path, line: 1, column: 1, width: 0 },
  };
}
