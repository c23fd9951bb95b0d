/** The words for what takes no page of a set-up. */
import type { SetupLeftOut } from "../facts/setup-left-out.ts";
import { sayMisfit } from "./say-misfit.ts";

/** One sentence, the same as where a pattern does not fit a notebook. */
export function saySetupLeftOut(why: SetupLeftOut): string {
  return why.kind === "misfit"
    ? sayMisfit(why.misfit)
    : "On this notebook it takes two pages, and a page that stays free is a single one.";
}
