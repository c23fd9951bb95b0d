/** A sheet as a drawing, so that a screen shows what will be printed. */
import { sheetMark } from "../../draw/page/paper-marks.ts";
import type { Scene } from "../../draw/scene.ts";
import { partMarks, type Sheet } from "./sheet.ts";

/** The drawing; `id` is made from slugs. */
export function sheetScene({ title, width, height, parts }: Sheet, id: string): Scene {
  const frame = { x: 0, y: 0, width, height };
  const figures = parts.flatMap((part) => (part.kind === "figure" ? [part.description] : []));
  return {
    id,
    title,
    description: figures.join(" "),
    frame,
    marks: [sheetMark("paper", frame), ...parts.flatMap(partMarks)],
  };
}
