/** What becomes of files that are brought beside those that are kept: new ones, known ones, and names that two of them have. */
import { slugOf } from "../../source/slug.ts";
import type { KeptFile } from "./kept-file.ts";
import type { ContentFile } from "./read-content-files.ts";

export interface Meeting {
  readonly fresh: readonly ContentFile[];
  /** Kept already, or the book's own. */
  readonly known: readonly ContentFile[];
  /** Another one has the name. */
  readonly clashes: readonly Clash[];
}

export interface Clash {
  readonly file: ContentFile;
  /** A pattern of the book cannot be replaced. */
  readonly isOfBook: boolean;
}

interface Here {
  readonly kept: readonly KeptFile[];
  /** The patterns of the book as written, by slug. */
  readonly texts: Readonly<Record<string, string>>;
}

/** Sorts the files. */
export function meetKept(files: readonly ContentFile[], { kept, texts }: Here): Meeting {
  const textAt = new Map<string, string>(kept.map(({ path, text }) => [path, text]));
  const ofBook = (path: string) => (path.startsWith("patterns/") ? texts[slugOf(path)] : undefined);
  const isKnown = ({ path, text }: KeptFile) => text === textAt.get(path) || text === ofBook(path);
  const isTaken = ({ path }: KeptFile) => textAt.has(path) || ofBook(path) !== undefined;
  const others = files.filter((file) => !isKnown(file));
  return {
    fresh: others.filter((file) => !isTaken(file)),
    known: files.filter(isKnown),
    clashes: others.filter(isTaken).map((file) => ({ file, isOfBook: !textAt.has(file.path) })),
  };
}
