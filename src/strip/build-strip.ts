/** What a strip is asked to carry, with its plans on one notebook, makes the strip. */
import { AXES, type Axis } from "../measure/axis.ts";
import type { Notebook } from "../notebook/notebook.ts";
import type { StripHead } from "../recipe/strip-recipe.ts";
import { buildSide } from "./build-side.ts";
import type { LaneChooser } from "./lay-lanes.ts";
import { letterOf } from "./run-labels.ts";
import type { Strip, StripPattern } from "./strip.ts";
import type { SideEntry } from "./strip-entry.ts";

export interface StripQuestion {
  readonly head: StripHead;
  readonly notebook: Notebook;
  /** In their order, which is that of letters and colours. */
  readonly entries: Readonly<Record<Axis, readonly SideEntry[]>>;
  readonly chooser: LaneChooser;
  /** The days for which its dated patterns are drawn, as text. */
  readonly dates?: string;
}

/** How many colours a strip has; a ninth pattern takes the first colour again, with its own letter. */
export const COLOUR_COUNT = 8;

/** The strip: exact, and the same on every machine. */
export function buildStrip({ head, notebook, entries, chooser, dates }: StripQuestion): Strip {
  const { slug, title, make, width, lanes } = head;
  return {
    slug,
    title,
    notebook: { slug: notebook.slug, title: notebook.title },
    make,
    width,
    patterns: patternsOfStrip(AXES.flatMap((axis) => entries[axis])),
    ...(dates === undefined ? {} : { dates }),
    sides: AXES.map((axis) =>
      buildSide({ axis, notebook, entries: entries[axis], lanes, chooser }),
    ),
  };
}

/** Numbered by the entries alone, so that a pattern looks the same on both sides and every notebook. */
function patternsOfStrip(entries: readonly SideEntry[]): readonly StripPattern[] {
  const first = new Map<string, SideEntry>();
  for (const entry of entries) if (!first.has(entry.slug)) first.set(entry.slug, entry);
  return [...first.values()].map(({ slug, title, isPlain, cases }, index) => ({
    slug,
    title,
    ...(isPlain ? { isPlain } : {}),
    ...(cases.some(isLargestCase) ? { isLargest: true } : {}),
    colour: (index % COLOUR_COUNT) + 1,
    letter: letterOf(index),
  }));
}

function isLargestCase({ plan }: SideEntry["cases"][number]): boolean {
  return plan.recipe.dates !== undefined && plan.dates === undefined;
}
