/** Four marks on a photo that are put onto the paper's corners, by a pointer or by arrow keys. */
import type { PhotoPoint } from "../../../../src/photo/grey.ts";
import type { PaperCorners } from "../../../../src/photo/measure-paper.ts";
import { makeElement } from "../../ui/make-element.ts";

const NAMES = ["Top left", "Top right", "Bottom right", "Bottom left"] as const;

const KEYS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
/** In pixels of the photo; with Shift, further. */
const FAR = 10;

export interface CornerHandles {
  readonly elements: readonly HTMLElement[];
  corners(): PaperCorners;
}

/** `size` is the photo's, in pixels; what the elements stand in shows just the photo. */
export function cornerHandles(
  start: PaperCorners,
  size: { readonly width: number; readonly height: number },
  changed: () => void,
): CornerHandles {
  let corners = start;
  const elements = NAMES.map((name, index) => {
    const handle = makeElement("button", {
      type: "button",
      class: "corner-handle",
      "aria-label": `${name} corner of the paper; arrow keys move it, with Shift further`,
    });
    const place = ({ x, y }: PhotoPoint) => {
      handle.style.left = `${(100 * (x + 0.5)) / size.width}%`;
      handle.style.top = `${(100 * (y + 0.5)) / size.height}%`;
    };
    const move = ({ x, y }: PhotoPoint) => {
      const inside = {
        x: Math.min(size.width - 1, Math.max(0, x)),
        y: Math.min(size.height - 1, Math.max(0, y)),
      };
      corners = withCorner(corners, index, inside);
      place(inside);
      changed();
    };
    const at = () => corners[index] ?? { x: 0, y: 0 };
    place(at());
    bindKeys(handle, at, move);
    bindPointer(handle, size, { at, move });
    return handle;
  });
  return { elements, corners: () => corners };
}

function withCorner([a, b, c, d]: PaperCorners, index: number, moved: PhotoPoint): PaperCorners {
  const at = (own: number, corner: PhotoPoint) => (own === index ? moved : corner);
  return [at(0, a), at(1, b), at(2, c), at(3, d)];
}

function bindKeys(handle: HTMLElement, at: () => PhotoPoint, move: (to: PhotoPoint) => void): void {
  handle.addEventListener("keydown", (event) => {
    const [right, down] = KEYS[event.key] ?? [0, 0];
    if (right === 0 && down === 0) return;
    event.preventDefault();
    const by = event.shiftKey ? FAR : 1;
    move({ x: at().x + right * by, y: at().y + down * by });
  });
}

/** The mark keeps its distance from the pointer, so that a finger does not hide what it is put on. */
function bindPointer(
  handle: HTMLElement,
  size: { readonly width: number; readonly height: number },
  { at, move }: { readonly at: () => PhotoPoint; readonly move: (to: PhotoPoint) => void },
): void {
  handle.addEventListener("pointerdown", (event) => {
    const shown = handle.parentElement?.getBoundingClientRect();
    if (!shown || !event.isPrimary) return;
    handle.setPointerCapture(event.pointerId);
    const from = { ...at(), clientX: event.clientX, clientY: event.clientY };
    const follow = ({ clientX, clientY }: PointerEvent) =>
      move({
        x: from.x + ((clientX - from.clientX) * size.width) / shown.width,
        y: from.y + ((clientY - from.clientY) * size.height) / shown.height,
      });
    const stop = () => {
      handle.removeEventListener("pointermove", follow);
      handle.removeEventListener("pointerup", stop);
      handle.removeEventListener("pointercancel", stop);
    };
    handle.addEventListener("pointermove", follow);
    handle.addEventListener("pointerup", stop);
    handle.addEventListener("pointercancel", stop);
  });
}
