/** Reads what one side of a strip carries: patterns, and plain divisions of the page. */
import type { Note } from "../../issue/facts/reading.ts";
import type { Axis } from "../../measure/axis.ts";
import { eachOnce, type NamedSlug, nameMeantBy } from "../../source/schema/named-slugs.ts";
import { noteNotTogether, takeMap } from "../../source/schema/take-map.ts";
import { takeText, takeWhole, unsuitable } from "../../source/schema/take-value.ts";
import { isSlug, plainSlug } from "../../source/slug.ts";
import {
  entryOf,
  type SourceEntry,
  type SourceMapping,
  type SourceNode,
} from "../../source/tree.ts";
import { RECIPE_KEYS } from "../recipe-keys.ts";
import { STRIP_BOUNDS } from "../strip-bounds.ts";
import { STRIP_KEYS } from "../strip-keys.ts";
import { type DivisionEntry, END_SIDES, type StripEntry } from "../strip-recipe.ts";
import { readBareSplit } from "./read-area.ts";
import { openReadContext } from "./read-context.ts";

const KEYS = STRIP_KEYS["strip-entry"];

const ENTRY = {
  owner: "strip-entry",
  allowed: Object.keys(KEYS),
  keys: KEYS,
  grammar: STRIP_KEYS,
  needsOne: ["pattern", "title"],
} as const;

/** An entry and where its name stands. */
export interface PlacedEntry extends NamedSlug {
  readonly entry: StripEntry;
}

/** The entries in their order, none of them twice; none where nothing is written. */
export function readStripEntries(
  written: SourceEntry | undefined,
  axis: Axis,
  note: Note,
): readonly PlacedEntry[] {
  if (!written) return [];
  const { value: node } = written;
  if (node.kind !== "list" || node.entries.length > STRIP_BOUNDS.patterns) {
    note(unsuitable({ key: axis, node, expected: STRIP_KEYS.strip[axis].expected }));
    return [];
  }
  const entries = node.entries.flatMap((one) => readEntry(one, axis, note) ?? []);
  return eachOnce(entries, note);
}

function readEntry(node: SourceNode, axis: Axis, note: Note): PlacedEntry | undefined {
  if (node.kind === "scalar") {
    const slug = takeSlug(node, { key: axis, isEntry: true }, note);
    return slug === undefined ? undefined : placed({ kind: "pattern", slug }, node);
  }
  const expected = { kind: "form", form: "strip-entry" } as const;
  const map = takeMap(node, ENTRY, { key: axis, expected, isEntry: true, note });
  if (!map) return undefined;
  noteNotTogether(map, "strip-entry", TOGETHER, note);
  const uses = usesIn(map, note);
  const pattern = entryOf(map, "pattern");
  if (!pattern) return readDivision(map, axis, { uses, note });
  const slug = takeSlug(pattern.value, { key: "pattern" }, note);
  return slug === undefined ? undefined : placed({ kind: "pattern", slug, ...uses }, pattern.value);
}

const TOGETHER = [
  ["pattern", "title"],
  ["pattern", "split"],
  ["pattern", "margin"],
] as const;

function placed(entry: StripEntry, { at }: SourceNode): PlacedEntry {
  return { entry, slug: entry.slug, at };
}

function takeSlug(
  node: SourceNode,
  behind: { readonly key: string; readonly isEntry?: boolean },
  note: Note,
): string | undefined {
  if (node.kind === "scalar" && isSlug(node.source)) return node.source;
  const expected = { kind: "form", form: "slug" } as const;
  note(unsuitable({ ...behind, node, expected, meant: nameMeantBy(node) }));
  return undefined;
}

interface Around {
  readonly uses: { readonly uses?: number };
  readonly note: Note;
}

function usesIn(map: SourceMapping, note: Note): Around["uses"] {
  const node = entryOf(map, "uses")?.value;
  if (!node) return {};
  return { uses: takeWhole({ key: "uses", node, expected: KEYS.uses.expected, note }) };
}

function readDivision(
  map: SourceMapping,
  axis: Axis,
  { uses, note }: Around,
): PlacedEntry | undefined {
  const [title, split] = [entryOf(map, "title")?.value, entryOf(map, "split")];
  if (!split && title) {
    const { expected } = KEYS.split;
    const about = { about: "shape", kind: "missing-key", owner: "strip-entry" } as const;
    note({ ...about, key: "split", expected, at: map.at });
  }
  const margin = readEnds(entryOf(map, "margin"), axis, note);
  const divided = split && readBareSplit(split, axis, openReadContext(note));
  if (!title) return undefined;
  const words = takeText({ key: "title", node: title, expected: KEYS.title.expected, note });
  const slug = plainSlug(words);
  if (slug === "" && words !== "") {
    note({ about: "rule", kind: "title-without-slug", title: words, at: title.at });
  }
  if (slug === "" || !divided) return undefined;
  return placed({ kind: "division", title: words, slug, split: divided, margin, ...uses }, title);
}

/** One number for both ends, or the keys of the axis's two sides. */
function readEnds(
  written: SourceEntry | undefined,
  axis: Axis,
  note: Note,
): DivisionEntry["margin"] {
  if (!written) return { start: 0, end: 0 };
  const { key, value: node } = written;
  const { expected } = RECIPE_KEYS.margin.top;
  if (node.kind === "scalar" && typeof node.value === "number") {
    const steps = takeWhole({ key, node, expected, note });
    return { start: steps, end: steps };
  }
  const [start, end] = END_SIDES[axis];
  const group = { owner: "margin", allowed: [start, end], grammar: {} } as const;
  const map = takeMap(node, group, { key, expected: KEYS.margin.expected, note });
  const stepsOf = (side: string) => {
    const steps = map && entryOf(map, side);
    return steps ? takeWhole({ key: side, node: steps.value, expected, note }) : 0;
  };
  return { start: stepsOf(start), end: stepsOf(end) };
}
