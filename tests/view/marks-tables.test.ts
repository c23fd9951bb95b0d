/** The marks to copy: by step, by dot and in millimetres from the paper's edge. */
import { describe, expect, it } from "vitest";
import { drawOrder } from "../../src/plan/order/draw-order.ts";
import type { PlanPage } from "../../src/plan/plan.ts";
import { marksTables } from "../../src/view/draw-along/marks-tables.ts";
import { axisOf, notebookWith, pageOf } from "../draw/plan-of.ts";

/** Columns counted from the edge, 7 mm before the first dot; rows counted from the first dot, 5 mm down. */
const NOTEBOOK = notebookWith(
  axisOf(60, 10, { first: 7 }),
  axisOf(90, 17, { pitch: 5.08, count: "dot-to-dot" }),
);

function tablesOf(...pages: readonly PlanPage[]) {
  return marksTables(
    pages.map((page) => drawOrder(page, NOTEBOOK)),
    NOTEBOOK,
  );
}

describe("the marks of a page", () => {
  it("are one table across and one down, without the paper's edge", () => {
    expect(tablesOf(pageOf(10, 16, [[0, 2, 4, 3]]))).toEqual([
      { axis: "across", title: "Across", rows: [{ steps: 4, dot: 4, mm: 22 }] },
      {
        axis: "down",
        title: "Down",
        rows: [
          { steps: 2, dot: 3, mm: 15.16 },
          { steps: 5, dot: 6, mm: 30.4 },
        ],
      },
    ]);
  });

  it("of a spread share a table where both pages are marked alike", () => {
    const left = pageOf(10, 16, [[0, 2, 4, 3]], "left");
    const right = pageOf(10, 16, [[0, 2, 5, 3]], "right");
    expect(tablesOf(left, right).map(({ title }) => title)).toEqual([
      "Across, left page",
      "Across, right page",
      "Down, both pages",
    ]);
  });

  it("are no table at all where there is nothing to mark", () => {
    const edges = notebookWith(
      axisOf(60, 11, { count: "edge-to-edge" }),
      axisOf(90, 17, { count: "edge-to-edge" }),
    );
    expect(marksTables([drawOrder(pageOf(12, 18, [[0, 0, 12, 18]]), edges)], edges)).toEqual([]);
  });
});
