/** Lists of file names inside a file: each with its place, none of them twice. */
import type { Place } from "../../issue/facts/place.ts";
import type { Note } from "../../issue/facts/reading.ts";
import { isSlug, slugFrom } from "../slug.ts";
import { isNothing, type SourceEntry, type SourceNode } from "../tree.ts";

/** The name of another file, and where it stands. */
export interface NamedSlug {
  readonly slug: string;
  readonly at: Place;
}

/** The names in their written order; none where the key is not there or has no list. What cannot be a name is none. */
export function namedSlugs(entry: SourceEntry | undefined, note: Note): readonly NamedSlug[] {
  if (entry?.value.kind !== "list") return [];
  const names = entry.value.entries.flatMap((node) =>
    node.kind === "scalar" && isSlug(node.source) ? [{ slug: node.source, at: node.at }] : [],
  );
  return eachOnce(names, note);
}

/** The names without those that came before, each of which is noted. */
export function eachOnce<Named extends NamedSlug>(
  names: readonly Named[],
  note: Note,
): readonly Named[] {
  const first = new Map<string, Place>();
  return names.filter(({ slug, at }) => {
    const before = first.get(slug);
    if (before) note({ about: "book", kind: "repeated-slug", slug, first: before, at });
    else first.set(slug, at);
    return before === undefined;
  });
}

/** What was probably meant by something that is no name: names without a comma between them, or one written otherwise. */
export function nameMeantBy(node: SourceNode): string | undefined {
  if (node.kind !== "scalar" || isNothing(node)) return undefined;
  const names = node.source.split(" ");
  const meant = names.every(isSlug) ? names.join(", ") : slugFrom(node.source);
  return meant === "" ? undefined : meant;
}
