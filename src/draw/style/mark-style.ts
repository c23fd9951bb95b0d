/** The look of one mark: its role's ink, with its lane's colour and dash and its own dash. */
import type { Mark } from "../scene.ts";
import { laneStyle } from "./lane-style.ts";
import { ROLE_STYLES, type Style } from "./role-style.ts";

/** What both the SVG and the PDF draw a mark with. `penScale` is the scene's. */
export function markStyle(mark: Mark, penScale = 1): Style {
  const { dash: roleDash, ...style } = ROLE_STYLES[mark.role];
  const lane = mark.lane === undefined ? undefined : laneStyle(mark.lane);
  const dash = (mark.kind === "path" ? mark.dash : undefined) ?? lane?.dash ?? roleDash ?? [];
  return {
    ...style,
    ...(lane && { stroke: lane.colour, text: lane.colour }),
    ...(dash.length > 0 && { dash }),
    width: style.width * penScale,
  };
}
