/** What the gallery keeps behind the # of its address, short enough to be read and sent on. */
import { PURPOSES } from "../../recipe/recipe.ts";
import {
  EVERYTHING,
  FITS,
  type GalleryQuery,
  LINE_RANGES,
  PAGE_COUNTS,
  SORTS,
} from "../gallery/gallery-query.ts";

/** What an address may name. */
export interface GalleryNames {
  readonly notebooks: readonly string[];
  readonly tags: readonly string[];
}

/** A search is cut off here, in characters. */
export const LONGEST_QUERY = 100;

const RANGE_NAMES = LINE_RANGES.map(({ name }) => name);

/** The address's part from # on, such as `#on=a5&for=week.day&fit=even`; "" for everything. */
export function writeGalleryAddress(state: GalleryQuery): string {
  const entries = [
    ["on", state.notebook],
    ["for", PURPOSES.filter((purpose) => state.purposes.includes(purpose)).join(".")],
    ["tag", state.tag],
    ["fit", state.fit],
    ["pages", state.pages],
    ["lines", state.lines],
    ["sort", state.sort === EVERYTHING.sort ? "" : state.sort],
    ["find", cut(state.query)],
  ].filter(([, value]) => value !== "");
  return entries.length === 0 ? "" : `#${new URLSearchParams(entries)}`;
}

/** What a change is to the history: another notebook is no step of its own, nor is a search that goes on. */
export function galleryStep(next: GalleryQuery, before: GalleryQuery): "push" | "replace" {
  const isOnly = (part: Partial<GalleryQuery>) =>
    writeGalleryAddress({ ...before, ...part }) === writeGalleryAddress(next);
  const isSearch = before.query !== "" && next.query !== "";
  return isOnly({ notebook: next.notebook }) || (isSearch && isOnly({ query: next.query }))
    ? "replace"
    : "push";
}

/** What an address says. A place on the page such as `#week` says nothing. */
export function readGalleryAddress(hash: string, known: GalleryNames): GalleryQuery {
  return readGalleryWords(new URLSearchParams(hash.replace(/^#/, "")), known);
}

/**
 * What the words of an address or of a form say. What is wrong or names what the book does not have counts as not
 * said; of a key said twice the first holds.
 */
export function readGalleryWords(said: URLSearchParams, known: GalleryNames): GalleryQuery {
  const word = (key: string) => said.get(key) ?? "";
  const purposes = word("for").split(".");
  return {
    notebook: oneOf(known.notebooks, word("on")) ?? "",
    purposes: PURPOSES.filter((purpose) => purposes.includes(purpose)),
    tag: oneOf(known.tags, word("tag")) ?? "",
    fit: oneOf(FITS, word("fit")) ?? "",
    pages: oneOf(PAGE_COUNTS, word("pages")) ?? "",
    lines: oneOf(RANGE_NAMES, word("lines")) ?? "",
    sort: oneOf(SORTS, word("sort")) ?? EVERYTHING.sort,
    query: cut(word("find")),
  };
}

/** Without blanks around it, and never in the middle of a character. */
function cut(query: string): string {
  const characters = [...query.trim().slice(0, 2 * LONGEST_QUERY)];
  return characters.slice(0, LONGEST_QUERY).join("").trim();
}

function oneOf<Value extends string>(values: readonly Value[], text: string): Value | undefined {
  return values.find((value) => value === text);
}
