/** The words for a plan that took one of the recipe's later layouts. */
import type { Misfit } from "../facts/misfit.ts";
import { sayMisfit } from "./say-misfit.ts";
import type { LabelAt } from "./say-path.ts";

/** Which layout was taken (1 and up), of how many besides the first, and why the first was not. */
export interface Alternative {
  readonly used: number;
  readonly others: number;
  readonly passedOver: Misfit;
}

/** Why the first layout does not fit, and which one this is. `labelAt` knows the labels of the first layout. */
export function sayAlternative(
  { used, others, passedOver }: Alternative,
  labelAt?: LabelAt,
): string {
  const taken = others === 1 ? "its second layout" : `layout ${used + 1} of its ${others + 1}`;
  const reason = sayMisfit(passedOver, labelAt);
  return `The first layout of this recipe does not fit here. ${reason} This is ${taken}.`;
}
