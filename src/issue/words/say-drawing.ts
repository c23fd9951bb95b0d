/** What the drawings of pages and notebooks are called, and the words for those who cannot see them. */
import type { Axis } from "../../measure/axis.ts";
import { sayCount } from "./say-count.ts";

/** One number for each direction. */
type ByAxis = Readonly<Record<Axis, number>>;

/** No description lists more labels than this, and none that are longer. */
const MOST_LABELS = 16;
const LONGEST_LABEL = 40;

/** What a plan's drawing is called, by the titles of its pattern and its notebook. */
export function sayPageTitle(pattern: string, notebook: string): string {
  return `${pattern}, on ${notebook}`;
}

/** A page as its drawing shows it. */
export interface PageFacts {
  readonly side: "single" | "left" | "right";
  readonly steps: ByAxis;
  readonly boxes: readonly { readonly label: string }[];
}

const SIDES = { single: "One page", left: "Left page", right: "Right page" } as const;

/** The pages with their steps, and the labels of their boxes. */
export function sayPages(pages: readonly PageFacts[]): string {
  return pages.map(sayPage).join(" ");
}

function sayPage({ side, steps, boxes }: PageFacts): string {
  const size = `${SIDES[side]} of ${steps.across} steps across and ${steps.down} down`;
  const count = boxes.length === 1 ? "one box" : sayCount(boxes.length, "box");
  const labels = [...new Set(boxes.map(({ label }) => label.trim()))].filter(
    (label) => label !== "",
  );
  const shown = labels.slice(0, MOST_LABELS).map(shorten);
  const more = labels.length > shown.length ? " and more" : "";
  return `${size}, ${count}${shown.length > 0 ? `: ${shown.join(", ")}${more}` : ""}.`;
}

function shorten(label: string): string {
  const characters = [...label.slice(0, 2 * LONGEST_LABEL)];
  if (characters.length <= LONGEST_LABEL) return label;
  return `${characters.slice(0, LONGEST_LABEL).join("")}…`;
}

/** A notebook's grid as its drawing shows it; the paper in millimetres. */
export interface GridFacts {
  readonly paper: { readonly width: number; readonly height: number };
  readonly ruling: string;
  readonly dots: ByAxis;
  readonly steps: ByAxis;
}

/** What a notebook's drawing is called. */
export function sayGridTitle(notebook: string): string {
  return `The grid of ${notebook}`;
}

/** The paper, the dots and the steps between them. */
export function sayGrid({ paper, ruling, dots, steps }: GridFacts): string {
  return (
    `One page of ${paper.width} by ${paper.height} mm with ${ruling}, ` +
    `${dots.across} across and ${dots.down} down: ` +
    `${steps.across} steps across and ${steps.down} down.`
  );
}

/** What the sign of a middle stands for, beside the sign; places such as `12 and 13 across` and `74 mm across`. */
export const MIDDLE_WORDS = {
  counted: (places: readonly string[]) => `middle by counting: ${places.join(", ")}`,
  paper: (places: readonly string[]) => `middle of the paper: ${places.join(", ")}`,
} as const;
