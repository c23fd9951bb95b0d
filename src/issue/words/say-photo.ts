/** The words for a photo whose dots are counted. */
import type { MeasuredLines } from "../../photo/measure-lines.ts";
import type { MeasuredGrid, Unmeasured } from "../../photo/measure-paper.ts";
import type { CountedGrid, LinedPage, PhotoDoubt, PhotoSide } from "../../photo/photo-count.ts";
import type { Said } from "./said.ts";
import { sayCount, sayList, sayMm } from "./say-count.ts";

const PHOTO_AGAIN =
  "Take it again from straight above, in even light without a shadow of your own, with all of a blank page and a little of the table around it.";

/** Why nothing is counted, and what would do. */
export function sayPhotoDoubt(doubt: PhotoDoubt): Said {
  switch (doubt.kind) {
    case "blurred":
      return {
        sentence: "The photo is not sharp enough to see dots in it.",
        hint: "Hold the phone still, tap the page so that the camera looks at it, and use more light.",
      };
    case "too-few":
      return {
        sentence: `No grid is seen, only ${sayCount(doubt.dots, "dot")} in rows.`,
        hint: PHOTO_AGAIN,
      };
    case "lined":
      return {
        sentence: "Lined paper is seen, but not clearly enough to count its lines.",
        hint: `Lay it on a table without stripes, of another colour than the paper. ${PHOTO_AGAIN}`,
      };
    case "upright":
      return {
        sentence: "Lined paper is seen, and its lines run from top to bottom.",
        hint: "Turn the photo, so that they run from left to right.",
      };
    case "cut-off":
      return {
        sentence: `The page goes on beyond the photo, ${saySides(doubt.sides)}.`,
        hint: "Take all of the page, with a little of the table around it.",
      };
    case "unsure-end":
      return {
        sentence: `It cannot be told where the ruling ends, ${saySides(doubt.sides)}.`,
        hint: "Take a blank page: a line of ink, a fold or a shadow may hide a row.",
      };
    case "bare-line":
      return {
        sentence: "A whole row or column within the ruling is bare.",
        hint: "Have one page in the picture, not two, and a blank one.",
      };
    case "gaps":
      return {
        sentence: `Only ${Math.floor(doubt.fill * 100)} % of the grid’s dots are seen.`,
        hint: PHOTO_AGAIN,
      };
    case "no-grid":
      return {
        sentence: "What is seen is too uneven to be counted.",
        hint: `Press the page flat. ${PHOTO_AGAIN}`,
      };
  }
}

const SIDE_WORDS: Readonly<Record<PhotoSide, string>> = {
  left: "at the left",
  top: "at the top",
  right: "at the right",
  bottom: "at the bottom",
};

function saySides(sides: readonly PhotoSide[]): string {
  return sayList(
    sides.map((side) => SIDE_WORDS[side]),
    "and",
  );
}

/** What was counted. */
export function sayCountedGrid({ across, down, ruling, fill }: CountedGrid): string {
  const what = ruling === "dots" ? "dots" : "lines of squared paper";
  const seen = ruling === "dots" ? "them" : "their crossings";
  const part =
    fill >= 1 ? `All of ${seen} are marked` : `${Math.floor(fill * 100)} % of ${seen} are seen`;
  return `${across} across and ${down} down: ${what}. ${part}. Check with the marks that none is missed at an edge.`;
}

/** What was counted of a lined page. */
export function sayLinedPage({ lines }: LinedPage): string {
  return `${sayCount(lines.length, "line")}: lined paper. Across it there is nothing to count. Check with the marks that none is missed at the top or at the bottom.`;
}

/** What the corners of the paper tell of lines. */
export function sayMeasuredLines({ pitch, top, spread }: MeasuredLines): string {
  const doubt =
    spread > DOUBTFUL
      ? ` But lines run ${sayPercent(spread)} askew: a mark may lie beside its corner.`
      : "";
  return `From line to line ${sayMm(pitch)}; the first line ${sayMm(top)} from the top.${doubt}`;
}

/** What the corners of the paper tell, before it is rounded for the fields, and what makes it doubtful. */
export function sayMeasuredGrid({ pitch, first, spread }: MeasuredGrid): string {
  const [across, down] = [sayMm(pitch.across), sayMm(pitch.down)];
  const steps = across === down ? across : `${across} across and ${down} down`;
  const place = `${sayMm(first.left)} from the left and ${sayMm(first.top)} from the top`;
  const off = Math.abs(pitch.across / pitch.down - 1);
  const doubts = [
    spread > DOUBTFUL && `opposite edges differ by ${sayPercent(spread)}`,
    off > DOUBTFUL && off < UNLIKE && `pitch across and pitch down differ by ${sayPercent(off)}`,
  ].filter((doubt) => doubt !== false);
  const doubt =
    doubts.length > 0 ? ` But ${sayList(doubts, "and")}: a mark may lie beside its corner.` : "";
  return `From dot to dot ${steps}; the first dot ${place}.${doubt}`;
}

/** A mark that is put with care is off by less (an estimate). */
const DOUBTFUL = 0.008;
/** Grids whose pitch differs are made with more than this between them (common practice, no source). */
const UNLIKE = 0.08;

function sayPercent(part: number): string {
  return `${(part * 100).toFixed(1)} %`;
}

/** Why there are no lengths, though there is a count. */
export function sayUnmeasured(kind: Unmeasured): Said {
  switch (kind) {
    case "curled":
      return {
        sentence: "The page is curled, so that the photo tells no lengths.",
        hint: "Press it flat and take it again, or measure by ruler.",
      };
    case "uneven":
      return {
        sentence: "Between these corners the lines would not lie evenly.",
        hint: "Put each mark onto its corner of the page; if they are there, the page is curled: press it flat and take it again.",
      };
    case "no-sheet":
      return {
        sentence: "No sheet of paper has its corners so.",
        hint: "Put each corner’s mark onto the corner of the page in the photo.",
      };
  }
}

/** What is wrong with a file that was to be a photo. */
export type PhotoFault =
  | { readonly kind: "no-picture" }
  | { readonly kind: "too-large"; readonly megapixels: number }
  | { readonly kind: "heavy"; readonly megabytes: number }
  | { readonly kind: "too-small"; readonly width: number; readonly height: number };

export function sayPhotoFault(fault: PhotoFault): Said {
  switch (fault.kind) {
    case "no-picture":
      return {
        sentence: "This browser cannot read the file as a picture.",
        hint: "Take a JPEG or a PNG file.",
      };
    case "too-large":
      return {
        sentence: `The picture has ${fault.megapixels} million pixels, too many to be opened here.`,
        hint: "Take a photo of the page with a phone as it comes.",
      };
    case "heavy":
      return {
        sentence: `The file has ${fault.megabytes} MB, too many to be opened here.`,
        hint: "Take a photo of the page with a phone as it comes.",
      };
    case "too-small":
      return {
        sentence: `The picture is ${fault.width} by ${fault.height} pixels, too small for dots to be seen.`,
        hint: "Each step needs about ten pixels: take the photo itself, not a preview of it.",
      };
  }
}
