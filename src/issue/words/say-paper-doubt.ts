/** The question whether the paper is right, where the dots lie at one side of it. */
import type { PaperDoubt } from "../facts/paper-doubt.ts";
import { sayMm } from "./say-count.ts";

/** Two sentences: what is strange, and what it may be. */
export function sayPaperDoubt({ axis, nearMm, farMm, papers: [paper] }: PaperDoubt): string {
  const [near, far] = axis === "across" ? ["left", "right"] : ["top", "bottom"];
  const strange = `Beyond the last dot ${sayMm(farMm)} stay bare at the ${far}, and only ${sayMm(nearMm)} at the ${near}.`;
  if (!paper) return `${strange} Check the paper and the number of dots.`;
  return `${strange} Is the paper ${paper.name}, ${paper.width} × ${sayMm(paper.height)}?`;
}
