/** Which side of a page each written margin lands on, and which keys land on the same one. */
import { PAPER_SIDES, type PageSide, type PaperSide } from "../measure/paper-side.ts";
import type { Binding } from "../notebook/notebook.ts";
import { MARGIN_KEYS, type Margin, type MarginKey } from "./recipe.ts";

/** The four margins of an area, in steps. */
export interface MarginSides extends Readonly<Record<PaperSide, number>> {
  readonly kind: "sides";
}

/** The sides on which more than one written key lands, each with its keys. Never empty. */
export interface MarginConflict {
  readonly kind: "conflict";
  readonly clashes: readonly MarginClash[];
}

interface MarginClash {
  readonly side: PaperSide;
  readonly keys: readonly MarginKey[];
}

const NO_MARGINS: MarginSides = { kind: "sides", top: 0, right: 0, bottom: 0, left: 0 };

/** Written margins as the four sides of a page, in steps; a side that no key names is 0. */
export function marginSides(
  margin: Margin,
  binding: Binding,
  page: PageSide,
): MarginSides | MarginConflict {
  const written = MARGIN_KEYS.filter((key) => margin.steps[key] !== undefined);
  if (written.length === 0) return NO_MARGINS;
  const keysOn = (side: PaperSide) =>
    written.filter((key) => sideOfKey(key, binding, page) === side);
  const clashes = PAPER_SIDES.map((side) => ({ side, keys: keysOn(side) })).filter(
    ({ keys }) => keys.length > 1,
  );
  if (clashes.length > 0) return { kind: "conflict", clashes };
  const stepsOn = (side: PaperSide) => keysOn(side).reduce((_, key) => margin.steps[key] ?? 0, 0);
  return {
    kind: "sides",
    top: stepsOn("top"),
    right: stepsOn("right"),
    bottom: stepsOn("bottom"),
    left: stepsOn("left"),
  };
}

/** The side that a margin key means on this page. */
export function sideOfKey(key: MarginKey, binding: Binding, page: PageSide): PaperSide {
  if (key === "inner") return boundSide(binding, page);
  if (key === "outer") return ACROSS_FROM[boundSide(binding, page)];
  return key;
}

const ACROSS_FROM: Readonly<Record<PaperSide, PaperSide>> = {
  top: "bottom",
  bottom: "top",
  left: "right",
  right: "left",
};

/**
 * The side at which a page is held. The two pages of a spread meet in the middle, whichever side a
 * single page is bound at; a page that is not bound counts as bound at the left.
 */
function boundSide(binding: Binding, page: PageSide): PaperSide {
  if (binding === "top") return "top";
  if (page === "left") return "right";
  if (page === "right") return "left";
  return binding === "right" ? "right" : "left";
}
