/** A `book.yaml` as somebody writes it: read, or every problem told at its place. */
import fc from "fast-check";
import { readBook } from "../../src/recipe/read/read-book.ts";
import { wildFile } from "../random/wild-file.ts";
import { promise, promiseTold, type Seen } from "./promises.ts";
import type { Sources } from "./sources.ts";

const TEXTS = [
  "title: Ours\nnotebooks: [a5, a6]\npatterns: all\n",
  "title: Ours\ncalendar: {region: GB, language: en, week: monday, weekOne: 4, utcOffset: +01:00}\n",
  "title: Ours\nurl: https://example.org/book/\nprinter: {x: 1.01, y: 0.99}\nwith: [general]\n",
] as const;

export function bookKind({ slugs }: Sources) {
  const path = "book.yaml";

  function attempt(text: string, seen: Seen): void {
    const reading = seen.run(() => readBook({ path, text }));
    seen.depth(reading.ok ? "read" : "refused");
    if (reading.ok) promise(reading.value.title !== "", "a book without a title");
    else promiseTold(reading.issues, { path, text }, seen);
  }

  const texts = fc.constantFrom(...TEXTS);
  const cases = wildFile({ owner: "book", texts, slugs });
  return { name: "books", cases, attempt };
}
