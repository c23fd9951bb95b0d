/** The words for what a whole plan leaves over: how many steps, and how many of them no longer lie empty. */
import { sayCount } from "./say-count.ts";

/** In steps; `sharedOut` is the part of `leftover` that tracks or gaps got. */
export interface PlanLeftover {
  readonly leftover: number;
  readonly sharedOut: number;
}

/** `36 steps over, all shared out`, for a list. */
export function sayOver({ leftover, sharedOut }: PlanLeftover): string {
  if (leftover === 0) return "Comes out even";
  return `${sayCount(leftover, "step")} over${sharedOutWords(leftover, sharedOut)}`;
}

/** `36 steps are left over, all shared out`, as the beginning of a sentence. */
export function sayLeftover({ leftover, sharedOut }: PlanLeftover): string {
  if (leftover === 0) return "Nothing is left over";
  const are = leftover === 1 ? "is" : "are";
  return `${sayCount(leftover, "step")} ${are} left over${sharedOutWords(leftover, sharedOut)}`;
}

function sharedOutWords(leftover: number, sharedOut: number): string {
  if (sharedOut === 0) return "";
  if (sharedOut < leftover) return `, ${sharedOut} of them shared out`;
  return leftover === 1 ? ", and not left empty" : ", all shared out";
}
