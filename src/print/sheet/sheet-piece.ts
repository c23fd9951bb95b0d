/** What goes on a sheet to be cut out of it. */
import type { Scene } from "../../draw/scene.ts";

/** Something to be printed in true size. */
export interface SheetPiece {
  readonly scene: Scene;
  /** Where it is cut: along its frame, with crop marks, or along lines of its own. */
  readonly cut: "frame" | "own";
  /** Only printed where it needs no further sheet. */
  readonly isExtra?: boolean;
}
