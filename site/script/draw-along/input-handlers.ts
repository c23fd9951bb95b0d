/** Going from stroke to stroke by keys and by fingers. */
import type { Stepper } from "./stepper.ts";

/** What each key does while someone draws along. */
const KEYS: Readonly<Record<string, (stepper: Stepper) => void>> = {
  ArrowRight: (stepper) => stepper.move(1),
  ArrowLeft: (stepper) => stepper.move(-1),
  " ": (stepper) => stepper.move(1),
  Home: (stepper) => stepper.go(0),
  End: (stepper) => stepper.go(stepper.state().steps.length - 1),
  Escape: (stepper) => stepper.stop(),
};

/** Listens to keys anywhere in the part of the page that holds the drawing and its words. */
export function bindKeys(part: HTMLElement, stepper: Stepper): void {
  part.addEventListener("keydown", (event) => {
    const act = KEYS[event.key];
    if (!act || stepper.state().place === undefined || isTaken(event)) return;
    event.preventDefault();
    act(stepper);
  });
}

/** With a modifier a key is the browser's, and the space bar belongs to whatever it would press. */
function isTaken({ key, target, altKey, ctrlKey, metaKey }: KeyboardEvent): boolean {
  if (altKey || ctrlKey || metaKey) return true;
  return key === " " && target instanceof Element && target.closest(PRESSED) !== null;
}

const PRESSED = "a, button, input, summary";

/** A swipe goes mostly sideways, and at least this far, in pixels. */
const FAR = 40;

/** Listens to swipes over the drawing: leftwards goes on, as a page is turned. */
export function bindSwipes(drawing: HTMLElement, stepper: Stepper): void {
  let start: PointerEvent | undefined;
  drawing.addEventListener("pointerdown", (event) => {
    start = event.isPrimary && event.pointerType !== "mouse" ? event : undefined;
  });
  drawing.addEventListener("pointercancel", () => {
    start = undefined;
  });
  drawing.addEventListener("pointerup", (event) => {
    if (!start || stepper.state().place === undefined) return;
    const [across, down] = [event.clientX - start.clientX, event.clientY - start.clientY];
    start = undefined;
    if (Math.abs(across) >= FAR && Math.abs(across) > 1.5 * Math.abs(down))
      stepper.move(across < 0 ? 1 : -1);
  });
}
