/** The keys of a notebook: for each what it takes and what it means. */
import { COUNTS, MIDDLES } from "../measure/grid-axis.ts";
import type { Grammar } from "../source/schema/keys.ts";
import { PAPER_NAMES } from "./paper.ts";

/** Bounds that keep a notebook on paper that exists; lengths in mm. */
export const BOUNDS = {
  title: 200,
  dots: { min: 2, max: 400 },
  pitch: { min: 0.5, max: 100 },
  paper: { min: 20, max: 2_000 },
} as const;

export const RULINGS = ["dots", "squares", "lines"] as const;
export const BINDINGS = ["left", "right", "top", "none"] as const;

/** What a notebook is where it does not say. */
export const NOTEBOOK_DEFAULTS = {
  count: "edge-to-dot",
  ruling: "dots",
  binding: "left",
  middle: "lower",
} as const;

export const NOTEBOOK_KEYS = {
  notebook: {
    title: {
      expected: { kind: "text", longest: BOUNDS.title },
      meaning: "The notebook's name, as it is shown.",
    },
    paper: {
      expected: { kind: "form", form: "paper", names: PAPER_NAMES, ...BOUNDS.paper },
      meaning: "The paper: a name, or its width and height in millimetres.",
    },
    pitch: {
      expected: { kind: "form", form: "pitch", ...BOUNDS.pitch },
      meaning: "From one dot to the next, in millimetres.",
    },
    dots: {
      expected: { kind: "form", form: "dots", ...BOUNDS.dots },
      meaning: "How many dots there are across and down.",
    },
    firstDot: {
      expected: { kind: "form", form: "first-dot", min: 0, max: BOUNDS.paper.max },
      meaning:
        "From the left and the top edge to the first dot, in millimetres. Default: the grid is centred.",
    },
    count: {
      expected: { kind: "form", form: "count", names: COUNTS },
      meaning: `Where counting starts and ends. Default: ${NOTEBOOK_DEFAULTS.count}.`,
    },
    ruling: {
      expected: { kind: "choice", allowed: RULINGS },
      meaning: `What is printed on the paper. Default: ${NOTEBOOK_DEFAULTS.ruling}.`,
    },
    binding: {
      expected: { kind: "choice", allowed: BINDINGS },
      meaning: `The side at which the pages are bound. Default: ${NOTEBOOK_DEFAULTS.binding}.`,
    },
    middle: {
      expected: { kind: "choice", allowed: MIDDLES },
      meaning: `Which middle of an odd count is used. Default: ${NOTEBOOK_DEFAULTS.middle}.`,
    },
  },
} as const satisfies Grammar;
