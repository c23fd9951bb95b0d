/** Lists of file names inside a file: each with its place, none of them twice. */
import type { Place } from "../../issue/facts/place.ts";
import type { Note } from "../../issue/facts/reading.ts";
import { isSlug } from "../slug.ts";
import type { SourceEntry } from "../tree.ts";

/** The name of another file, and where it stands. */
export interface NamedSlug {
  readonly slug: string;
  readonly at: Place;
}

/** The names in their written order; none where the key is not there or has no list. What cannot be a name is none. */
export function namedSlugs(entry: SourceEntry | undefined, note: Note): readonly NamedSlug[] {
  if (entry?.value.kind !== "list") return [];
  const first = new Map<string, Place>();
  return entry.value.entries.flatMap((node) => {
    if (node.kind !== "scalar" || !isSlug(node.source)) return [];
    const slug = node.source;
    const before = first.get(slug);
    if (before) {
      note({ about: "book", kind: "repeated-slug", slug, first: before, at: node.at });
      return [];
    }
    first.set(slug, node.at);
    return [{ slug, at: node.at }];
  });
}
