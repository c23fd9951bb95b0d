/** Where the first dot of an axis lies when nothing says so. */
import type { GridAxis } from "../measure/grid-axis.ts";
import { type Length, length } from "../measure/length.ts";

/** In the middle of the paper, to half a nanometre; negative where the dots need more than the paper has. */
export function centredDot({
  paper,
  dots,
  pitch,
}: Pick<GridAxis, "paper" | "dots" | "pitch">): Length {
  return length((paper - (dots - 1) * pitch) / 2);
}
