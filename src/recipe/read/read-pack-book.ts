/** Reads the `book.yaml` of a folder that a book builds on: its title, and what else it says in vain. */
import * as z from "zod";
import type { Issue } from "../../issue/facts/issue.ts";
import type { Place } from "../../issue/facts/place.ts";
import { type Reading, readingOf, type TextFile } from "../../issue/facts/reading.ts";
import { readYamlFile } from "../../source/front-matter/read-front-matter.ts";
import { checkSchema } from "../../source/schema/check-schema.ts";
import type { NamedSlug } from "../../source/schema/named-slugs.ts";
import { textSchema } from "../../source/schema/value-schema.ts";
import { entryOf, type SourceEntry } from "../../source/tree.ts";
import { BOOK_KEYS } from "../book-keys.ts";
import { packsIn } from "./read-book.ts";

export interface PackBook {
  /** Left out: the folder's name stands for it. */
  readonly title?: string;
  /** Keys that would change the book if they were read. */
  readonly ignored: readonly { readonly key: string; readonly at: Place }[];
  /** The folders that it builds on itself, and where it says so. */
  readonly packs: readonly NamedSlug[];
}

const { book: KEYS } = BOOK_KEYS;

const PACK_SHAPE = {
  owner: "book",
  keys: KEYS,
  grammar: BOOK_KEYS,
  schema: z.object({ title: textSchema(KEYS.title.expected).optional() }),
} as const;

/** The title, or what is wrong with it. All other keys must be keys of a book, and that is all that is asked of them. */
export function readPackBook(file: TextFile): Reading<PackBook> {
  const yaml = readYamlFile(file);
  if (!yaml.ok) return yaml;
  const { tree, faults } = yaml.value;
  const issues: Issue[] = [...faults];
  const head = checkSchema(PACK_SHAPE, tree, (issue) => issues.push(issue));
  if (!head) return { ok: false, issues };
  const book: PackBook = {
    ...(head.title === undefined ? {} : { title: head.title }),
    ignored: tree.entries.filter(isMissed).map(({ key, keyAt }) => ({ key, at: keyAt })),
    packs: packsIn(entryOf(tree, "with"), () => undefined),
  };
  return readingOf(book, issues);
}

/** A list of files leaves some out, and a calendar changes what pages show; an address and a printer are the host's. */
function isMissed({ key, value }: SourceEntry): boolean {
  if (key === "calendar") return true;
  return ["notebooks", "patterns", "strips", "setups"].includes(key) && value.kind === "list";
}
