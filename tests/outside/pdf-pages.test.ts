/** Pages as another program measures them: every dot and every line where the notebook has them. */
import { describe, expect, it } from "vitest";
import { ROLE_STYLES } from "../../src/draw/style/role-style.ts";
import {
  dotLength,
  type GridAxis,
  positionLength,
  usableSteps,
} from "../../src/measure/grid-axis.ts";
import { toMm } from "../../src/measure/length.ts";
import { pagePdf } from "../../src/print/pdf/pdf-files.ts";
import { notebookOf, pageOf, plansOf, RECIPES, SETTINGS } from "../print/demo-book.ts";
import { readStrokes } from "../print/poppler.ts";

/** In millimetres. */
const TRUE_TO = 0.05;
const EDGES = [ROLE_STYLES.edge.width, ROLE_STYLES["edge-fine"].width];

const isPen = (width: number, pen: number) => Math.abs(width - pen) < 0.001;
const isNear = (place: number) => (mm: number) => Math.abs(mm - place) < TRUE_TO;

const positionsOf = (axis: GridAxis) =>
  Array.from({ length: usableSteps(axis) + 1 }, (_, k) => toMm(positionLength(axis, k)));
const dotsOf = (axis: GridAxis) =>
  Array.from({ length: axis.dots }, (_, k) => toMm(dotLength(axis, k + 1)));

/** Places that are on no position; at the paper's edge a line stops by half its pen short. */
function offPosition(axis: GridAxis, places: readonly number[]): readonly number[] {
  const paper = toMm(axis.paper);
  const isCut = (mm: number) => Math.min(mm, paper - mm) <= ROLE_STYLES.edge.width / 2 + TRUE_TO;
  return places.filter((mm) => !isCut(mm) && !positionsOf(axis).some(isNear(mm)));
}

describe.each(["a5", "a5-dots", "jis-b5", "letter"])("pages for %s", (slug) => {
  const { across, down } = notebookOf(slug).axes;
  const plans = plansOf(notebookOf(slug));
  const fitting = RECIPES.filter((recipe) => plans.get(recipe.slug)?.fits);
  const chosen = fitting.filter((_, index) => index % 12 === 0);

  it.each(chosen.map((recipe) => recipe.slug))("%s has its lines on positions", async (pattern) => {
    const lines = readStrokes(await pagePdf(pageOf(pattern, slug), SETTINGS))
      .filter(({ width, isDashed }) => !isDashed && EDGES.some((pen) => isPen(width, pen)))
      .flatMap((stroke) => stroke.lines);
    expect(lines.length).toBeGreaterThan(0);
    const strange = {
      across: offPosition(
        across,
        lines.flatMap(({ x1, x2 }) => [x1, x2]),
      ),
      down: offPosition(
        down,
        lines.flatMap(({ y1, y2 }) => [y1, y2]),
      ),
    };
    expect(strange).toEqual({ across: [], down: [] });
  });

  it("have a row of dots at every row, from the first dot on", async () => {
    const rows = readStrokes(await pagePdf(pageOf("seed-list", slug), SETTINGS))
      .filter(({ width, isDashed }) => isDashed && isPen(width, ROLE_STYLES.grid.width))
      .flatMap(({ lines }) => lines.filter(({ y1, y2 }) => y1 === y2));
    const missing = dotsOf(down).filter((mm) => !rows.some(({ y1 }) => isNear(mm)(y1)));
    expect(missing).toEqual([]);
    // A row may stop before a label and go on behind it: each of its parts begins on a dot.
    const strange = rows.filter(
      ({ x1, x2, y1 }) =>
        !dotsOf(across).some(isNear(Math.min(x1, x2))) || !dotsOf(down).some(isNear(y1)),
    );
    expect(strange).toEqual([]);
    const [first = Number.NaN] = dotsOf(across);
    expect(rows.filter(({ x1 }) => isNear(first)(x1)).length).toBeGreaterThan(down.dots / 2);
  });
});
