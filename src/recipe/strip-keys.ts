/** The keys of a strip: for each what it takes and what it means. */
import type { Grammar } from "../source/schema/keys.ts";
import { LIMITS } from "./limits.ts";
import { STRIP_BOUNDS, STRIP_DEFAULTS, STRIP_TITLE } from "./strip-bounds.ts";
import { MAKES } from "./strip-recipe.ts";

const ENTRIES = { kind: "form", form: "strip-entries", max: STRIP_BOUNDS.patterns } as const;

export const STRIP_KEYS = {
  strip: {
    title: { expected: STRIP_TITLE, meaning: "The strip's name, as it is shown." },
    across: {
      expected: ENTRIES,
      meaning:
        "Patterns whose columns are marked on the side that lies across, and plain divisions of it. Where none says its uses, the most used one comes first.",
    },
    down: {
      expected: ENTRIES,
      meaning:
        "Patterns whose rows are marked on the side that lies down, and plain divisions of it. Where none says its uses, the most used one comes first.",
    },
    dates: {
      expected: { kind: "form", form: "days" },
      meaning: `The days for which patterns with dates are marked, at most ${STRIP_BOUNDS.years} years. Default: their largest case, with 31 days and six weeks in a month.`,
    },
    lanes: {
      expected: { kind: "whole", unit: "lanes", ...STRIP_BOUNDS.lanes },
      meaning: `At most so many lanes a side. Default: ${STRIP_DEFAULTS.lanes}.`,
    },
    make: {
      expected: { kind: "choice", allowed: MAKES },
      meaning: `How the two sides come together: both on one face, the second turned round (edges), on a fold, or as two strips. Default: ${STRIP_DEFAULTS.make}.`,
    },
    width: {
      expected: { kind: "millimetres", ...STRIP_BOUNDS.width },
      meaning: `The strip's width in millimetres. Default: ${STRIP_DEFAULTS.width}.`,
    },
  },
  "strip-entry": {
    pattern: {
      expected: { kind: "form", form: "slug" },
      meaning: "A pattern, by the name of its file. The name alone says the same.",
    },
    title: {
      expected: STRIP_TITLE,
      meaning: "The title of a plain division. It cannot be the file name of a pattern.",
    },
    split: {
      expected: { kind: "form", form: "split", min: 1, max: LIMITS.tracks },
      meaning: "How a plain division splits the page: into columns across, into rows down.",
    },
    margin: {
      expected: { kind: "form", form: "division-margin", min: 0, max: LIMITS.space },
      meaning:
        "Empty steps at both ends of a plain division: one number, or left and right across, top and bottom down. Default: 0.",
    },
    uses: {
      expected: { kind: "whole", unit: "uses", ...STRIP_BOUNDS.uses },
      meaning:
        "How often it is drawn. If any entry of the strip says so, each side carries what adds up to most uses. Default: 1.",
    },
  },
} as const satisfies Grammar;
