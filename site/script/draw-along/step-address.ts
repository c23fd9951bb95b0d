/** The step that the address names: `#stroke=5`, `#marks=1`, or `#drawn` behind the last. */
import type { AlongStep } from "../../../src/view/draw-along/steps.ts";
import { isDrawn, type StepperState, stepOf } from "./stepper.ts";

/** The address's part from # on for a step. */
export function stepAddress({ kind, number }: AlongStep): string {
  return `#${kind}=${number}`;
}

const DRAWN = "#drawn";

/** The index of the step that an address names, as many as there are behind the last; none where it names none of these. */
export function readStepAddress(hash: string, steps: readonly AlongStep[]): number | undefined {
  if (hash === DRAWN) return steps.length;
  const place = steps.findIndex((step) => stepAddress(step) === hash);
  return place < 0 ? undefined : place;
}

/** What an address says of where the keeper is, without its #; "" at rest. */
export function stepText(state: StepperState): string {
  const step = stepOf(state);
  if (isDrawn(state)) return DRAWN.slice(1);
  return step ? stepAddress(step).slice(1) : "";
}
