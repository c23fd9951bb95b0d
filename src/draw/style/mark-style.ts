/** The look of one mark: its role's ink, with its lane's colour and dash and its own dash. */

import type { Mark } from "../scene.ts";
import { laneInk } from "./lane-style.ts";
import { INK, type Ink } from "./role-style.ts";

/** What both the SVG and the PDF draw a mark with. `penScale` is the scene's. */
export function markLook(mark: Mark, penScale = 1): Ink {
  const { dash: roleDash, ...ink } = INK[mark.role];
  const lane = mark.lane === undefined ? undefined : laneInk(mark.lane);
  const dash = (mark.kind === "path" ? mark.dash : undefined) ?? lane?.dash ?? roleDash ?? [];
  return {
    ...ink,
    ...(lane && { stroke: lane.colour, text: lane.colour }),
    ...(dash.length > 0 && { dash }),
    width: ink.width * penScale,
  };
}
