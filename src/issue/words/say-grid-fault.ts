/** The words for a grid that does not lie on its paper: a file hears of its keys and paper, a field of its sheet. */
import type { Axis } from "../../measure/axis.ts";
import type { GridFault } from "../facts/grid-fault.ts";
import type { Said } from "./said.ts";
import { sayMm } from "./say-count.ts";

/** Sentence and remedy at a place in a file. */
export function sayGridFaultInFile(fault: GridFault): Said {
  const { axis } = fault;
  switch (fault.kind) {
    case "dots-beyond-paper":
      return { sentence: tooLongInFile(fault), hint: roomInFile(fault) };
    case "first-dot-beyond-paper":
      return {
        sentence: `The first dot ${axis} lies ${sayMm(fault.firstMm)} in, and the paper is ${saySize(fault.paperMm, axis)}.`,
        hint: `\`firstDot\` is measured from the ${axis === "across" ? "left" : "top"} edge. Left out, the grid is centred.`,
      };
    case "empty-edge-step":
      return {
        sentence: emptyStep(fault, "the paper's edge"),
        hint: `Let counting ${fault.end === "first" ? "start" : "end"} at the dot, with \`count\`, or move \`firstDot\`.`,
      };
  }
}

/** The sentences at a field. */
export function sayGridFaultAtField(fault: GridFault): string {
  switch (fault.kind) {
    case "dots-beyond-paper":
      return fault.isCentred ? centredTooLongAtField(fault) : tooLongAtField(fault);
    case "first-dot-beyond-paper":
      return `The first dot lies ${sayMm(fault.firstMm)} in, and the sheet is ${saySize(fault.paperMm, fault.axis)}.`;
    case "empty-edge-step":
      return `${emptyStep(fault, "the edge of the sheet")} ${
        fault.end === "first" ? "Start" : "Stop"
      } counting at the dot, or move the first dot.`;
  }
}

type Of<K extends GridFault["kind"]> = Extract<GridFault, { kind: K }>;
type TooLong = Of<"dots-beyond-paper">;

function tooLongInFile({ axis, dots, pitchMm, needsMm, hasMm, isCentred }: TooLong): string {
  return isCentred
    ? `${dots} dots ${axis} at ${sayMm(pitchMm)} need ${sayMm(needsMm)} and the paper is ${saySize(hasMm, axis)}.`
    : `The dots ${axis} need ${sayMm(needsMm)} and the paper has ${sayRest(hasMm, axis)}.`;
}

function roomInFile({ axis, fitting }: TooLong): string {
  return fitsGrid(fitting) ? `At this pitch ${fitting} dots ${axis} fit.` : makeRoom("paper");
}

function centredTooLongAtField({ axis, dots, pitchMm, needsMm, hasMm, fitting }: TooLong): string {
  const need = `${dots} dots at ${sayMm(pitchMm)} need ${sayMm(needsMm)}; the sheet is ${saySize(hasMm, axis)}`;
  return fitsGrid(fitting) ? `${need}; ${fitting} fit.` : `${need}. ${makeRoom("sheet")}`;
}

function tooLongAtField({ axis, needsMm, hasMm, fitting }: TooLong): string {
  const most = fitsGrid(fitting) ? `At this pitch ${fitting} dots fit.` : makeRoom("sheet");
  return `These dots need ${sayMm(needsMm)}, and the sheet has ${sayRest(hasMm, axis)}. ${most}`;
}

function emptyStep({ axis, end }: Of<"empty-edge-step">, edge: string): string {
  return `The ${end} dot ${axis} lies on ${edge}, so the step between them has no size.`;
}

/** One dot has no step. */
function fitsGrid(dots: number): boolean {
  return dots >= 2;
}

function makeRoom(paper: "paper" | "sheet"): string {
  return `Make the pitch smaller or the ${paper} larger.`;
}

/** `148 mm wide`. */
function saySize(mm: number, axis: Axis): string {
  return `${sayMm(mm)} ${axis === "across" ? "wide" : "high"}`;
}

/** `140 mm to the right of the first`. */
function sayRest(mm: number, axis: Axis): string {
  return `${sayMm(mm)} ${axis === "across" ? "to the right of" : "below"} the first`;
}
