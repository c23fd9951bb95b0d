/** One drawing as a file: a page as large as its frame. */
import type { Scene } from "../draw/scene.ts";
import type { PrintSettings } from "./page-pdf.ts";
import { writePdf } from "./write-pdf.ts";

/** The file, in true size. */
export function scenePdf(scene: Scene, settings: PrintSettings): Promise<Uint8Array> {
  const { title, description, frame, marks } = scene;
  const lies = { frame, place: { x: 0, y: 0, turn: 0 } } as const;
  const page = {
    title,
    width: frame.width,
    height: frame.height,
    parts: [{ kind: "figure", description, marks, lies }],
  } as const;
  return writePdf({ ...settings, pages: [page], title });
}
