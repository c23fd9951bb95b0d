/** Reads where a split's leftover goes: a keyword, or the label of one of its tracks. */
import type { Note } from "../../issue/facts/reading.ts";
import { nearest } from "../../source/nearest-word.ts";
import { unsuitable } from "../../source/schema/take-value.ts";
import { isNothing, type SourceEntry } from "../../source/tree.ts";
import type { Leftover, Track } from "../recipe.ts";
import { LEFTOVER_KEYWORDS, RECIPE_KEYS } from "../recipe-keys.ts";

/** Keywords win over labels; of tracks with one label the first is meant. At the end where nothing is written. */
export function readLeftover(
  entry: SourceEntry | undefined,
  tracks: readonly Track[],
  note: Note,
): Leftover {
  if (!entry) return { kind: "end" };
  const { value: node } = entry;
  if (node.kind !== "scalar" || isNothing(node)) {
    note(unsuitable({ key: "leftover", node, expected: RECIPE_KEYS.split.leftover.expected }));
    return { kind: "end" };
  }
  const written = node.source;
  const keyword = LEFTOVER_KEYWORDS.find((word) => word === written);
  if (keyword) return { kind: keyword };
  const index = tracks.findIndex((track) => track.area.label === written);
  if (index >= 0 && written !== "") return { kind: "track", index };
  const labels = [...new Set(tracks.map((track) => track.area.label))].filter(Boolean);
  const meant = nearest(written, [...LEFTOVER_KEYWORDS, ...labels]);
  note({
    about: "rule",
    kind: "unknown-leftover",
    written,
    keywords: LEFTOVER_KEYWORDS,
    labels,
    ...(meant === undefined ? {} : { nearest: meant }),
    at: node.at,
  });
  return { kind: "end" };
}
