/** The small edits of a recipe that can help where something does not fit, in series from small to large. */
import type { Misfit } from "../../issue/facts/misfit.ts";
import type { NearFit } from "../../issue/facts/near-fit.ts";
import type { Axis } from "../../measure/axis.ts";
import type { Binding } from "../../notebook/notebook.ts";
import { areaAt, areasAlong, type PlacedArea } from "../../recipe/area-tree.ts";
import type { Attempt } from "../../recipe/recipe.ts";
import { type SameName, sameNames, splitsNaming } from "../layout/same-names.ts";
import { clashSeries, marginSeries, nameSeries, type Series, splitSeries } from "./edit-series.ts";

/** All series of edits that a misfit can be mended with; none where it asks for too much altogether. */
export function editsAt(attempt: Attempt, misfit: Misfit, binding: Binding): readonly Series[] {
  switch (misfit.kind) {
    case "split-too-short":
    case "area-too-small":
      return shortSeries(attempt, misfit, binding);
    case "same-impossible":
      return looserName(attempt, misfit);
    case "margin-clash": {
      const { side, path } = misfit;
      const area = areaAt(attempt, misfit);
      return area ? clashSeries({ attempt, area, path, side, binding }, misfit) : [];
    }
    case "too-much":
    case "beyond-years":
      return [];
  }
}

/** Along the misfit's axis: at its own place, at each area around it, and at the names that these share with others. */
function shortSeries(
  attempt: Attempt,
  { side, axis, path }: Extract<Misfit, { kind: "split-too-short" | "area-too-small" }>,
  binding: Binding,
): readonly Series[] {
  const around = areasAlong(attempt, { side, path }).toReversed();
  return [
    ...around.flatMap(({ area, path }) => {
      const spot = { attempt, area, path, side, binding };
      return [marginSeries(spot, axis), ...splitSeries(spot, axis)];
    }),
    ...sharedNames(attempt, around, axis).flatMap((name) => looserName(attempt, name)),
  ];
}

/** A maximum below the name's largest minimum would leave the two apart. */
function looserName(attempt: Attempt, name: SameName): readonly Series[] {
  const largerMax = nameSeries(attempt, name, "larger-name-max");
  return [nameSeries(attempt, name, "smaller-name-min"), largerMax.slice(-1)];
}

/** The series that an edit is one of, made anew for an attempt; empty where the attempt has no such place. */
export function seriesOf(attempt: Attempt, fact: NearFit, binding: Binding): Series {
  if ("name" in fact) {
    const name = sameNames(attempt).find((one) => one.name === fact.name);
    return name ? nameSeries(attempt, name, fact.kind) : [];
  }
  const { side } = fact;
  const found = areasAlong(attempt, fact).at(-1);
  if (!found) return [];
  const spot = { attempt, ...found, side, binding };
  if (fact.kind === "leave-out-margin") {
    const keys = [fact.key, ...fact.stays];
    const series = clashSeries(spot, { keys, paperSide: fact.paperSide });
    return series.flat().filter((one) => "key" in one.fact && one.fact.key === fact.key);
  }
  if (fact.kind === "smaller-margin") return marginSeries(spot, fact.axis);
  return splitSeries(spot, fact.axis, [fact.kind]).flat();
}

/** Names with a minimum that more than one split asks for, one of them along the axis where something lacks steps. */
function sharedNames(
  attempt: Attempt,
  around: readonly PlacedArea[],
  axis: Axis,
): readonly SameName[] {
  const along = around.map(({ area }) => area.split).filter((split) => split?.axis === axis);
  return sameNames(attempt).filter(({ name, min }) => {
    const users = splitsNaming(attempt, name);
    return min > 1 && users.length > 1 && users.some((split) => along.includes(split));
  });
}
