/** The fill `blank`: nothing but the paper. */
import type { DrawFill } from "./fill-marks.ts";

/** Draws nothing. */
export const blankFill: DrawFill = () => ({});
