/** The words for a place on a page: which columns or rows, of which area, on which page. */
import type { Axis } from "../../measure/axis.ts";
import type { PageSide } from "../../measure/paper-side.ts";

/** A place in a plan: the page and a path such as `rows.1.columns`. */
export interface PlanPath {
  readonly side: PageSide;
  readonly path: string;
}

/** The label of the area at a path, where it has one. */
export type LabelAt = (place: PlanPath) => string | undefined;

/** The tracks of an axis: columns run across, rows run down. */
export const TRACK_NOUN: Readonly<Record<Axis, string>> = { across: "column", down: "row" };

/** The tracks of a split: `the columns of row 2`, `the rows on the left page`. */
export function saySplit(split: PlanPath, labelAt: LabelAt = () => undefined): string {
  const parts = split.path.split(".");
  const name = parts.at(-1) === "columns" ? "columns" : "rows";
  const area = { ...split, path: parts.slice(0, -1).join(".") };
  if (area.path !== "") return `the ${name} of ${areaWords(area, labelAt)}${onPage(split.side)}`;
  return `the ${name}${onPage(split.side)}`;
}

/** An area: `the page`, `the left page`, `row 2`, `column 1 of “Week”`. */
export function sayArea(area: PlanPath, labelAt: LabelAt = () => undefined): string {
  if (area.path === "") return area.side === "single" ? "the page" : `the ${area.side} page`;
  return `${areaWords(area, labelAt)}${onPage(area.side)}`;
}

/** From the area outwards, up to the first one that has a label. */
function areaWords(area: PlanPath, labelAt: LabelAt): string {
  const label = labelAt(area);
  if (label) return `“${label}”`;
  const parts = area.path.split(".");
  const noun = parts.at(-2) === "columns" ? "column" : "row";
  const words = `${noun} ${Number(parts.at(-1)) + 1}`;
  const around = { ...area, path: parts.slice(0, -2).join(".") };
  return around.path === "" ? words : `${words} of ${areaWords(around, labelAt)}`;
}

function onPage(side: PageSide): string {
  return side === "single" ? "" : ` on the ${side} page`;
}
