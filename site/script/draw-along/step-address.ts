/** The step that the address names: `#stroke=5`, `#marks=1`, or `#drawn` behind the last. */
import type { AlongStep } from "../../../src/view/draw-along/steps.ts";
import { bindAddress } from "../app/bind-address.ts";
import { isDrawn, type Stepper, type StepperState, stepOf } from "./stepper.ts";

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

/** Begins at the step of the address, keeps the two in step, and follows an address that somebody else sets. */
export function bindStepAddress(window: Window, stepper: Stepper): void {
  const read = bindAddress(window, stepper, {
    // Replaced, not added: the way back leads to the page before, not through every stroke.
    write: (state, before) =>
      state.place === undefined && before.place === undefined ? undefined : placeAddress(state),
    read: (hash, take) => {
      const place = readStepAddress(hash, stepper.state().steps);
      if (place !== undefined) take(() => stepper.go(place));
    },
  });
  read();
}

function placeAddress(state: StepperState): string {
  const step = stepOf(state);
  if (isDrawn(state)) return DRAWN;
  return step ? stepAddress(step) : "";
}
