/** Runs of chance, named by their place in the list. */
import type { UsedInterval } from "../../src/strip/best-lanes.ts";
import type { Random } from "./random.ts";

export interface NamedRun extends UsedInterval {
  readonly name: string;
}

/** Up to `most` runs on so many steps, each used up to so many times. */
export function randomRuns(
  random: Random,
  { most, steps, uses }: { readonly most: number; readonly steps: number; readonly uses: number },
): readonly NamedRun[] {
  return Array.from({ length: random.whole(0, most) }, (_, index) => {
    const from = random.whole(0, steps - 1);
    return {
      name: `r${index}`,
      from,
      to: random.whole(from + 1, steps),
      uses: random.whole(1, uses),
    };
  });
}
