/** The step that the address names: `#stroke=5`, `#marks=1`, or `#drawn` behind the last. */
import type { AlongStep } from "../../../src/view/draw-along/steps.ts";
import { isDrawn, type Stepper, stepOf } from "./stepper.ts";

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

/** Keeps the address at the step, and follows one that somebody else sets. */
export function followAddress(window: Window, stepper: Stepper): void {
  const { location, history } = window;
  const follow = () => {
    const place = readStepAddress(location.hash, stepper.state().steps);
    if (place !== undefined) stepper.go(place);
  };
  follow();
  window.addEventListener("hashchange", follow);
  stepper.watch((state, before) => {
    if (state.place === undefined && before.place === undefined) return;
    const step = stepOf(state);
    const part = isDrawn(state) ? DRAWN : step ? stepAddress(step) : "";
    const [address = ""] = location.href.split("#");
    // Replaced, not added: the way back leads to the page before, not through every stroke.
    history.replaceState(null, "", `${address}${part}`);
  });
}
