/** The sentence that stands at a field whose content will not do. */
import type { FieldProblem } from "../field-problem.ts";
import { sayCount, sayMm } from "./say-count.ts";
import { sayWanted } from "./say-wanted.ts";

/** What would do in the field, and the words on the button that puts it there; none for most problems. */
export function fieldOffer(
  problem: FieldProblem,
): { readonly text: string; readonly words: string } | undefined {
  if (problem.kind !== "no-file-name" || problem.nearest === undefined) return undefined;
  return { text: problem.nearest, words: `Make it ${problem.nearest}` };
}

/** One or two plain sentences, with what would do. */
export function sayFieldProblem(problem: FieldProblem): string {
  switch (problem.kind) {
    case "unsuitable":
      return `This needs ${sayWanted(problem.wanted)}.`;
    case "too-many-decimals":
      return `At most ${sayCount(problem.decimals, "decimal")} are kept exactly.`;
    case "control-character":
      return "This has a character in it that cannot be shown.";
    case "no-file-name":
      return "A file name has small letters a–z, figures and hyphens, not a hyphen first.";
    case "no-stretch":
      return `This needs a number from ${problem.min} to ${problem.max}. A printer that is off by more does not print at actual size.`;
    case "dots-beyond-paper":
      return beyondPaper(problem);
    case "first-dot-beyond-paper":
      return `The first dot lies ${sayMm(problem.firstMm)} in, and the sheet is ${sayMm(problem.paperMm)} ${
        problem.axis === "across" ? "wide" : "high"
      }.`;
    case "empty-edge-step":
      return `The ${problem.end} dot ${problem.axis} lies on the edge of the sheet, so the step between them has no size. ${
        problem.end === "first" ? "Start" : "Stop"
      } counting at the dot, or move the first dot.`;
  }
}

function beyondPaper(problem: Extract<FieldProblem, { kind: "dots-beyond-paper" }>): string {
  const { axis, dots, pitchMm, needsMm, hasMm, isCentred, fitting } = problem;
  if (isCentred) {
    const size = `${sayMm(hasMm)} ${axis === "across" ? "wide" : "high"}`;
    const need = `${dots} dots at ${sayMm(pitchMm)} need ${sayMm(needsMm)}; the sheet is ${size}`;
    return fitting < 2 ? `${need}. ${SMALLER}` : `${need}; ${fitting} fit.`;
  }
  const behind = axis === "across" ? "to the right of" : "below";
  const most = fitting < 2 ? SMALLER : `At this pitch ${fitting} dots fit.`;
  return `These dots need ${sayMm(needsMm)}, and the sheet has ${sayMm(hasMm)} ${behind} the first. ${most}`;
}

const SMALLER = "Make the pitch smaller or the sheet larger.";
