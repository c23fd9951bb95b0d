/** What a mark in a drawing stands for; how it looks is said once, in `ink.ts`. */
export type Role =
  | "paper"
  | "grid"
  | "binding"
  | "margin"
  | "edge"
  | "fill"
  | "label"
  | "count"
  | "tick"
  | "middle"
  | "paper-middle"
  | "cut"
  | "lane"
  | "lane-text"
  | "note";
