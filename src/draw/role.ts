/** What a mark in a drawing stands for; how it looks is said once, in `ink.ts`. */
export type Role =
  /** What the paper lies on: fills the frame. */
  | "ground"
  /** The sheet itself, with its outline. */
  | "paper"
  /** The notebook's printed dots. */
  | "grid"
  /** The notebook's printed squares or lines. */
  | "grid-line"
  | "binding"
  | "margin"
  /** Outlines, and lines between unlike boxes. */
  | "edge"
  /** Lines between boxes of one kind, as in a table. */
  | "edge-fine"
  /** Rules, check boxes and squares inside a box. */
  | "fill"
  /** Dots inside a box, stronger than the notebook's own. */
  | "fill-dots"
  /** Numbers inside a box. */
  | "fill-text"
  /** The label of a box. */
  | "label"
  | "label-outside"
  /** Of a day, from a calendar file: its text, or a bar where text is too small to be read. */
  | "event"
  /** The label of a box that heads the page. */
  | "heading"
  /** A label that is too small to be read. */
  | "label-bar"
  /** Numbers of positions beside the paper. */
  | "count"
  /** The number of the last position: all the steps. */
  | "total"
  | "tick"
  /** The middle by counting: solid marks. */
  | "middle"
  /** The middle by measuring: hollow marks. */
  | "paper-middle"
  /** Where the first dot lies, in millimetres. */
  | "dimension"
  /** The dots of the test sheet, by which a photo of it is measured. */
  | "sheet-dot"
  | "cut"
  /** Where paper is folded, not cut. */
  | "fold"
  /** What must meet where two pieces are joined. */
  | "joint"
  /** The ticks of a lane, and what else wears a lane's colour. */
  | "lane"
  /** Where a track of a lane begins or ends: a block at its own ticks, which others only pass. */
  | "lane-cap"
  /** Behind the end of the page, on a strip that goes on. */
  | "page-end"
  /** A track on a strip: one broad line in the odd lanes, two fine ones in the even. */
  | "lane-bar"
  | "lane-rail"
  /** How many steps a track has. */
  | "lane-text"
  | "lane-letter"
  | "note";
