/** The line that says which strip this is, along which axis and for which notebook. */
import type { Face } from "./strip-face.ts";

/** Such as `Everyday strip · across · A5, 26 × 38`. */
export function stripHeading({ strip, side }: Face): string {
  return [strip.title, side.axis, strip.notebook.title].join(" · ");
}
