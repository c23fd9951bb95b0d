/** How each role looks: one table for the screen and for paper, in millimetres and sRGB colours. */
import { SHEET_DOTS } from "../../photo/test-sheet.ts";
import type { Role } from "../role.ts";
import type { TextWeight } from "../text-width.ts";

/** The look of one role. Path marks use stroke and fill, text marks use text and weight. */
export interface Style {
  /** `#rrggbb`, or none. */
  readonly stroke: string | "none";
  /** Stroke width in millimetres. */
  readonly width: number;
  readonly fill: string | "none";
  /** In millimetres; left out for a solid line. */
  readonly dash?: readonly number[];
  readonly cap: "butt" | "round" | "square";
  readonly join: "miter" | "round";
  /** Colour of text marks. */
  readonly text: string;
  readonly weight: TextWeight;
}

/** The few colours of the book. Contrast on paper and ground is checked in the tests (WCAG 2.2, 1.4.3 and 1.4.11). */
export const COLOURS = {
  ground: "#f2ecdf",
  paper: "#fdfaf3",
  /** Margins: never the only sign of anything. */
  tint: "#f7f1e3",
  ink: "#1f2b24",
  moss: "#4a5248",
  sage: "#5f6b5f",
  reed: "#78816f",
  stone: "#857e6a",
  terracotta: "#a63c1a",
  slate: "#35627a",
} as const;

/** Fonts in the order in which they are tried; widths are estimated, so any sans serif will do. */
export const FONT_FAMILY = "Fira Sans, Helvetica, Arial, sans-serif";

const LINE: Style = {
  stroke: COLOURS.ink,
  width: 0.2,
  fill: "none",
  cap: "butt",
  join: "miter",
  text: COLOURS.ink,
  weight: "normal",
};

/** Role to look. */
export const ROLE_STYLES: Readonly<Record<Role, Style>> = {
  ground: { ...LINE, stroke: "none", width: 0, fill: COLOURS.ground },
  paper: { ...LINE, stroke: COLOURS.stone, width: 0.2, fill: COLOURS.paper },
  grid: { ...LINE, stroke: COLOURS.stone, width: 0.45, cap: "round" },
  "grid-line": { ...LINE, stroke: COLOURS.stone, width: 0.12 },
  binding: { ...LINE, stroke: COLOURS.stone, width: 0.45, dash: [2.4, 1.8], cap: "round" },
  margin: { ...LINE, stroke: "none", width: 0, fill: COLOURS.tint },
  edge: { ...LINE, width: 0.5, cap: "square" },
  "edge-fine": { ...LINE, width: 0.25 },
  fill: { ...LINE, stroke: COLOURS.reed, width: 0.18 },
  "fill-dots": { ...LINE, stroke: COLOURS.sage, width: 0.7, cap: "round" },
  "fill-text": { ...LINE, text: COLOURS.moss },
  label: LINE,
  /** Of days outside of the month, quarter or year. */
  "label-outside": { ...LINE, text: COLOURS.sage },
  event: { ...LINE, stroke: "none", width: 0, fill: COLOURS.moss, text: COLOURS.moss },
  heading: { ...LINE, weight: "bold" },
  "label-bar": { ...LINE, stroke: "none", width: 0, fill: COLOURS.reed },
  count: { ...LINE, text: COLOURS.moss },
  total: { ...LINE, weight: "bold" },
  tick: { ...LINE, stroke: COLOURS.moss, width: 0.18 },
  middle: {
    ...LINE,
    stroke: COLOURS.terracotta,
    width: 0.3,
    fill: COLOURS.terracotta,
    text: COLOURS.terracotta,
    weight: "bold",
    join: "round",
  },
  "paper-middle": {
    ...LINE,
    stroke: COLOURS.slate,
    width: 0.3,
    fill: "none",
    text: COLOURS.slate,
  },
  dimension: { ...LINE, stroke: COLOURS.moss, width: 0.18, text: COLOURS.moss },
  "sheet-dot": { ...LINE, width: SHEET_DOTS.size, cap: "round" },
  cut: { ...LINE, width: 0.15 },
  fold: { ...LINE, width: 0.15, dash: [2, 1] },
  joint: { ...LINE, width: 0.15, fill: COLOURS.ink },
  lane: { ...LINE, width: 0.35 },
  "lane-cap": { ...LINE, width: 0.8 },
  "page-end": { ...LINE, stroke: "none", width: 0, fill: COLOURS.moss },
  "lane-bar": { ...LINE, width: 0.8 },
  "lane-rail": { ...LINE, width: 0.25 },
  "lane-text": LINE,
  "lane-letter": { ...LINE, weight: "bold" },
  note: { ...LINE, text: COLOURS.moss },
};
