/** The step that the address names: `#stroke=5`, `#marks=1`. */
import type { AlongStep } from "./along-steps.ts";
import type { Course } from "./course.ts";

/** The address's part from # on for a step. */
export function stepAddress({ kind, number }: AlongStep): string {
  return `#${kind}=${number}`;
}

/** The index of the step that an address names; none where it names none of these. */
export function readStepAddress(hash: string, steps: readonly AlongStep[]): number | undefined {
  const place = steps.findIndex((step) => stepAddress(step) === hash);
  return place < 0 ? undefined : place;
}

/** Keeps the address at the step, and follows one that somebody else sets. */
export function followAddress(window: Window, course: Course): void {
  const { location, history } = window;
  const follow = () => {
    const place = readStepAddress(location.hash, course.state().steps);
    if (place !== undefined) course.go(place);
  };
  follow();
  window.addEventListener("hashchange", follow);
  course.watch(({ steps, place }, before) => {
    const step = place === undefined ? undefined : steps[place];
    if (!step && before.place === undefined) return;
    const [address = ""] = location.href.split("#");
    // Replaced, not added: the way back leads to the page before, not through every stroke.
    history.replaceState(null, "", step ? `${address}${stepAddress(step)}` : address);
  });
}
