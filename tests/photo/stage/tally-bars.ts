/** What came of a staged photo of the test sheet, against the stretch that is the truth. */
import type { BarsFound } from "../../../src/photo/bars-found.ts";
import type { Focal, Stretch } from "../../../src/photo/camera-over.ts";
import type { Grey } from "../../../src/photo/grey.ts";
import { measureBars } from "../../../src/photo/measure-bars.ts";
import { type BarsStaging, stageBars } from "./staged-bars.ts";

export interface BarsOutcome {
  /** `told`, or the doubt's kind. */
  readonly came: string;
  /** By how much of itself the worse of both stretches is off, and how many of its own deviations that is. */
  readonly off?: number;
  readonly deviations?: number;
}

/** All of the work at once. */
export function measuredIn(photo: Grey, focal?: Focal): BarsFound {
  const work = measureBars(photo, focal);
  let step = work.next();
  while (!step.done) step = work.next();
  return step.value;
}

export async function barsOutcome(staging: BarsStaging): Promise<BarsOutcome> {
  return tallied(measuredIn(await stageBars(staging), staging.focal), staging.stretch);
}

export function tallied(found: BarsFound, truth: Stretch): BarsOutcome {
  if (!found.ok) return { came: found.doubt.kind };
  const { length, off } = found.bars;
  const each = (["x", "y"] as const).map((side) => {
    const wrong = Math.abs(length[side] / 100 - truth[side]);
    return { off: wrong / truth[side], deviations: (200 * wrong) / off[side] };
  });
  return {
    came: "told",
    off: Math.max(...each.map((one) => one.off)),
    deviations: Math.max(...each.map((one) => one.deviations)),
  };
}
