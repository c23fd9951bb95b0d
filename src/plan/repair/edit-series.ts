/** The edits as they are tried and told: each a fact, and the attempt after it. */
import type { Misfit } from "../../issue/facts/misfit.ts";
import type { NameChange, NearFit, SplitChange } from "../../issue/facts/near-fit.ts";
import type { Axis } from "../../measure/axis.ts";
import type { PageSide } from "../../measure/paper-side.ts";
import type { Binding } from "../../notebook/notebook.ts";
import { splitPath } from "../../recipe/area-tree.ts";
import type { Area, Attempt, MarginKey, Split } from "../../recipe/recipe.ts";
import type { SameName } from "../layout/same-names.ts";
import type { Edit } from "./edit.ts";
import { smallerMargin, withoutMargin } from "./edit-margin.ts";
import { largerNameMax, smallerNameMin } from "./edit-name.ts";
import { fewerTracks, narrowerGap, smallerMin, smallerSteps } from "./edit-split.ts";
import { replaceMargin, replaceSplit } from "./replace-part.ts";

/** One edit of an attempt. */
export interface Edited {
  readonly fact: NearFit;
  /** The attempt after the edit: made only when it is tried. */
  readonly edited: () => Attempt;
  /** How many steps the edit gives back: the measure of how much it changes. */
  readonly freed: number;
}

/** From small to large: the first that helps is the one to tell. */
export type Series = readonly Edited[];

/** An area of one of the attempt's pages. */
export interface Spot {
  readonly attempt: Attempt;
  readonly area: Area;
  readonly path: string;
  readonly side: PageSide;
  readonly binding: Binding;
}

/** Smaller margins of an area along an axis. */
export function marginSeries({ attempt, area, path, side, binding }: Spot, axis: Axis): Series {
  const series = smallerMargin(area.margin, axis, { binding, side });
  return series.map(({ replacement, freed, ...change }) => ({
    fact: { kind: "smaller-margin", side, path, axis, ...change },
    edited: () => replaceMargin(attempt, area.margin, replacement()),
    freed,
  }));
}

/** Of two margins on one side, either is left out. */
export function clashSeries(
  { attempt, area, path, side }: Spot,
  { keys, paperSide }: Pick<Extract<Misfit, { kind: "margin-clash" }>, "keys" | "paperSide">,
): readonly Series[] {
  const isKey = (key: string): key is MarginKey => Object.hasOwn(area.margin.steps, key);
  return keys.filter(isKey).map((key) => {
    const stays = keys.filter((other) => other !== key);
    const from = area.margin.steps[key] ?? 0;
    const place = { side, path, paperSide };
    const edited = () => replaceMargin(attempt, area.margin, withoutMargin(area.margin, key));
    return [
      {
        fact: { kind: "leave-out-margin", ...place, key, stays, from, to: 0 },
        edited,
        freed: from,
      },
    ];
  });
}

const SPLIT_EDITS = {
  "narrower-gap": narrowerGap,
  "smaller-min": smallerMin,
  "smaller-steps": smallerSteps,
  "fewer-tracks": fewerTracks,
} as const;

const SPLIT_KINDS = ["narrower-gap", "smaller-min", "smaller-steps", "fewer-tracks"] as const;

/** Edits of an area's own split, where it runs along the axis: of all kinds, or of those asked for. */
export function splitSeries(
  { attempt, area, path, side }: Spot,
  axis: Axis,
  kinds: readonly SplitChange["kind"][] = SPLIT_KINDS,
): readonly Series[] {
  const { split } = area;
  if (!split || split.axis !== axis) return [];
  return kinds.map((kind) =>
    SPLIT_EDITS[kind](split).map(({ replacement, freed, ...change }) => ({
      fact: { kind, side, path: splitPath(path, axis), axis, ...change },
      edited: () =>
        replaceSplit(attempt, split, (other) =>
          other === split ? replacement() : alike(SPLIT_EDITS[kind](other), change.to, other),
        ),
      freed,
    })),
  );
}

/** The same edit of a split that comes from the same place of the recipe, with other units. */
function alike(edits: readonly Edit<Split>[], to: number, split: Split): Split {
  return edits.find((edit) => edit.to === to)?.replacement() ?? split;
}

/** Looser limits of a name, of one kind. */
export function nameSeries(attempt: Attempt, name: SameName, kind: NameChange["kind"]): Series {
  const edits = kind === "smaller-name-min" ? smallerNameMin : largerNameMax;
  return edits(attempt, name).map(({ from, to, freed, replacement }) => ({
    fact: { kind, name: name.name, from, to },
    edited: replacement,
    freed,
  }));
}
