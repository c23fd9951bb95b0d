/** The pages of a set-up as two other programs read them: how many, in which order, how large, and where their lines are. */
import { describe, expect, it } from "vitest";
import { ROLE_STYLES } from "../../src/draw/style/role-style.ts";
import { type GridAxis, positionLength } from "../../src/measure/grid-axis.ts";
import { toMm } from "../../src/measure/length.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { UNDATED } from "../../src/plan/when.ts";
import { setupPdf } from "../../src/print/pdf/pdf-files.ts";
import { planSetup } from "../../src/setup/plan-setup.ts";
import { NOTEBOOKS, notebookOf, RECIPES, SETTINGS } from "../print/demo-book.ts";
import type { GreyPicture } from "../print/grey-picture.ts";
import { drawnByPdfium } from "../print/pdfium.ts";
import { readFacts, readSizes, readStrokes } from "../print/poppler.ts";
import { setupOf } from "../set-up/known-patterns.ts";

/** In millimetres. */
const TRUE_TO = 0.05;
const EDGES = [ROLE_STYLES.edge.width, ROLE_STYLES["edge-fine"].width];

const WRITTEN = {
  dates: { from: "2027-03-01", to: "2027-03-14" },
  pages: ["seed-list", "ninths-spread", { each: "week", pages: ["seed-list", "committee-notes"] }],
} as const;

async function printed(notebook: Notebook, first: number) {
  const setup = planSetup({
    setup: setupOf({ ...WRITTEN, first }),
    notebook,
    when: UNDATED,
    recipe: (slug) => RECIPES.find((one) => one.slug === slug) ?? fail(slug),
  });
  return { setup, pdf: await setupPdf({ setup, notebook }, SETTINGS) };
}

function fail(slug: string): never {
  throw new Error(`no pattern ${slug}`);
}

const positionsOf = (axis: GridAxis, positions: readonly number[]) =>
  positions.map((position) => toMm(positionLength(axis, position)));

describe.each(["a5", "b5-right"])("the pages of a set-up on %s", (slug) => {
  const notebook = notebookOf(slug);
  const { across, down } = notebook.axes;

  it("are all there in actual size, with their numbers and the side of the first", async () => {
    const { setup, pdf } = await printed(notebook, 42);
    expect(setup.pages.map(({ drawn }) => drawn?.pattern)).toEqual([
      "seed-list",
      undefined,
      "ninths-spread",
      "ninths-spread",
      "seed-list",
      "committee-notes",
      "seed-list",
      "committee-notes",
    ]);
    const sizes = readSizes(pdf);
    expect(sizes).toHaveLength(8);
    for (const [width, height] of sizes) {
      expect(Math.abs(width - toMm(across.paper))).toBeLessThan(TRUE_TO);
      expect(Math.abs(height - toMm(down.paper))).toBeLessThan(TRUE_TO);
    }
    const side = slug === "b5-right" ? "right" : "left";
    expect(readFacts(pdf)).toContain(`the first page is 42 and lies at the ${side}`);
    const text = Buffer.from(pdf).toString("latin1");
    expect(text).toContain("/PageLayout /TwoPageLeft");
    expect(text.includes("/Direction /R2L")).toBe(slug === "b5-right");
    expect(text).toMatch(/\/PageLabels <<\s*\/Nums \[0 <<\s*\/S \(?\/?D\)?\s*\/St 42/);
  });

  it("have their boxes on the positions of their plans, page by page, and nothing on a free one", async () => {
    const { setup, pdf } = await printed(notebook, 42);
    for (const [index, { drawn }] of setup.pages.entries()) {
      const strokes = readStrokes(pdf, index + 1);
      if (!drawn) {
        expect(strokes).toEqual([]);
        continue;
      }
      const boxes = setup.plans[drawn.plan]?.pages[drawn.page]?.boxes ?? [];
      const lines = strokes
        .filter(
          ({ width, isDashed }) => !isDashed && EDGES.some((pen) => Math.abs(width - pen) < 0.001),
        )
        .flatMap((stroke) => stroke.lines);
      const upright = lines.filter(({ x1, x2 }) => Math.abs(x1 - x2) < TRUE_TO).map(({ x1 }) => x1);
      const wanted = positionsOf(
        across,
        boxes.flatMap(({ x, w }) => [x, x + w]),
      );
      const paper = toMm(across.paper);
      const isInside = (mm: number) => mm > 1 && mm < paper - 1;
      const missing = wanted
        .filter(isInside)
        .filter((mm) => !upright.some((x) => Math.abs(x - mm) < TRUE_TO));
      const strange = upright
        .filter(isInside)
        .filter((x) => !wanted.some((mm) => Math.abs(x - mm) < TRUE_TO));
      expect({ index, missing, strange }).toEqual({ index, missing: [], strange: [] });
    }
  });

  it("have their dots where the notebook has them, in PDFium, too", async () => {
    const { setup, pdf } = await printed(notebook, 43);
    const [page] = setup.pages;
    const boxes = setup.plans[page?.drawn?.plan ?? -1]?.pages[0]?.boxes ?? [];
    // Dots inside the first box that is bare; those near its label are covered.
    const bare = boxes.find(
      ({ fill, label, w, h }) => fill === "blank" && label !== "" && w > 6 && h > 1,
    );
    const paper = { width: toMm(across.paper), height: toMm(down.paper) };
    const picture = await drawnByPdfium(pdf, 600, { paper });
    const x = bare ? bare.x + bare.w - 1 : 0;
    const y = bare ? bare.y + 1 : 0;
    const dot = { x: toMm(positionLength(across, x)), y: toMm(positionLength(down, y)) };
    const dark = darkest(picture, dot);
    expect(Math.hypot(dark.x - dot.x, dark.y - dot.y)).toBeLessThan(TRUE_TO);
  });
});

/** The middle of what is dark within half a millimetre of a point. */
function darkest(
  { greyAt, across, down }: GreyPicture,
  { x, y }: { readonly x: number; readonly y: number },
) {
  const reach = Math.round(0.5 * across);
  const [middleX, middleY] = [Math.round(x * across), Math.round(y * down)];
  let [ink, alongX, alongY] = [0, 0, 0];
  for (let py = middleY - reach; py <= middleY + reach; py++) {
    for (let px = middleX - reach; px <= middleX + reach; px++) {
      const dark = 255 - greyAt(px, py);
      ink += dark;
      alongX += dark * (px + 0.5);
      alongY += dark * (py + 0.5);
    }
  }
  return { x: alongX / ink / across, y: alongY / ink / down };
}

it("is bound in memory: a thousand pages are made one after another", async () => {
  const notebook = NOTEBOOKS[0] ?? notebookOf("a5");
  const setup = planSetup({
    setup: setupOf({
      dates: { from: "2027-01-01", to: "2027-12-31" },
      first: 1,
      pages: [
        { pattern: "seed-list", times: 400 },
        { pattern: "committee-notes", times: 400 },
        { pattern: "seed-list", times: 200 },
      ],
    }),
    notebook,
    when: UNDATED,
    recipe: (slug) => RECIPES.find((one) => one.slug === slug) ?? fail(slug),
  });
  const pdf = await setupPdf({ setup, notebook }, SETTINGS);
  expect(readFacts(pdf)).toMatch(/Pages:\s+1000\n/);
});
