/** The sentence for each note on a strip. */
import type { StripNote } from "../strip-note.ts";

/** One plain sentence, with a hint that can be acted on. */
export function sayStripNote({ width, needs, lanes }: StripNote): string {
  const counted = lanes.join(" and ");
  return `A width of ${width} mm has no room for ${counted} lanes, so the strip is ${needs} mm wide. Ask for fewer lanes, or fold the strip.`;
}
