/** The small edits of a recipe that can free steps where something does not fit, in series from small to large. */
import { AXES, type Axis } from "../measure/axis.ts";
import type { Binding } from "../notebook/notebook.ts";
import type { Misfit } from "../problem/misfit.ts";
import type { NearFit } from "../problem/near-fit.ts";
import type { Area, Attempt } from "../recipe/recipe.ts";
import { smallerMargin } from "./edit-margin.ts";
import { fewerTracks, narrowerGap, smallerMin, smallerSteps } from "./edit-split.ts";
import type { Side } from "./plan.ts";
import { replaceMargin, replaceSplit } from "./replace.ts";

/** One edit of an attempt. */
export interface Edited {
  readonly fact: NearFit;
  /** The attempt after the edit: made only when it is tried. */
  readonly edited: () => Attempt;
  /** How many steps the edit gives back: the measure of how much it changes. */
  readonly freed: number;
}

const SPLIT_EDITS = [
  { kind: "narrower-gap", edits: narrowerGap },
  { kind: "smaller-min", edits: smallerMin },
  { kind: "smaller-steps", edits: smallerSteps },
  { kind: "fewer-tracks", edits: fewerTracks },
] as const;

/** All series of edits along the misfit's axis: at its own place and at each area around it. */
export function editsAt(
  attempt: Attempt,
  misfit: Misfit,
  binding: Binding,
): readonly (readonly Edited[])[] {
  if (misfit.kind !== "split-too-short" && misfit.kind !== "area-too-small") return [];
  const { side, axis } = misfit;
  const around = areasAlong(attempt, side, misfit.path).reverse();
  return around.flatMap(({ area, path }) => [
    ...marginSeries({ attempt, area, path, side, axis, binding }),
    ...splitSeries({ attempt, area, path, side, axis }),
  ]);
}

interface Spot {
  readonly attempt: Attempt;
  readonly area: Area;
  readonly path: string;
  readonly side: Side;
  readonly axis: Axis;
}

function marginSeries(spot: Spot & { readonly binding: Binding }): readonly (readonly Edited[])[] {
  const { attempt, area, path, side, axis, binding } = spot;
  const series = smallerMargin(area.margin, axis, { binding, side });
  return [
    series.map(({ replacement, freed, ...change }) => ({
      fact: { kind: "smaller-margin" as const, side, path, axis, ...change },
      edited: () => replaceMargin(attempt, area.margin, replacement),
      freed,
    })),
  ];
}

function splitSeries({ attempt, area, path, side, axis }: Spot): readonly (readonly Edited[])[] {
  const { split } = area;
  if (!split || split.axis !== axis) return [];
  const name = axis === AXES[0] ? "columns" : "rows";
  const splitPath = path === "" ? name : `${path}.${name}`;
  return SPLIT_EDITS.map(({ kind, edits }) =>
    edits(split).map(({ replacement, freed, ...change }) => ({
      fact: { kind, side, path: splitPath, axis, ...change },
      edited: () => replaceSplit(attempt, split, replacement),
      freed,
    })),
  );
}

/** The areas from the page in to the one that a path names; a split's own name ends the walk. */
function areasAlong(attempt: Attempt, side: Side, path: string): { area: Area; path: string }[] {
  let area: Area | undefined = pageOf(attempt, side);
  const found = [{ area, path: "" }];
  let so = "";
  for (const part of path === "" ? [] : path.split(".")) {
    so = so === "" ? part : `${so}.${part}`;
    if (part === "columns" || part === "rows") continue;
    area = area.split?.tracks[Number(part)]?.area;
    if (!area) break;
    found.push({ area, path: so });
  }
  return found;
}

function pageOf(attempt: Attempt, side: Side): Area {
  if (attempt.kind === "page") return attempt.page;
  return side === "right" ? attempt.right : attempt.left;
}
