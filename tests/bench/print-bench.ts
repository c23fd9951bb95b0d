/** How fast paper is made, beside the same drawings as SVG, in one run on one machine. */
import { createSVGWindow } from "svgdom";
import { pageScene } from "../../src/draw/page/page-scene.ts";
import { createSvgWriter } from "../../src/draw/svg/write-svg.ts";
import { bookPdf } from "../../src/print/book-pdf.ts";
import { FONT_FILES, readFonts } from "../../src/print/font/print-fonts.ts";
import { pagePdf } from "../../src/print/page-pdf.ts";
import { stripPdf } from "../../src/print/strip-pdf.ts";
import {
  BOOK,
  fontFile,
  notebookOf,
  plansOf,
  RECIPES,
  SETTINGS,
  stripsOf,
} from "../print/demo-book.ts";

const ROUNDS = 5;
const NOTEBOOK = "a5";

/** Something to be timed, and how many things it makes. */
interface Work {
  readonly name: string;
  readonly count: number;
  readonly run: () => Promise<void>;
}

/** A line for each kind of work: how many a second, how long for one, and against SVG. */
export async function printBench(): Promise<readonly string[]> {
  const works = worksOf();
  const best = new Map(works.map(({ name }) => [name, Number.POSITIVE_INFINITY]));
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const { name, count, run } of works) {
      const start = performance.now();
      await run();
      best.set(name, Math.min(best.get(name) ?? 0, (performance.now() - start) / count));
    }
  }
  const svg = best.get(works[0]?.name ?? "") ?? 1;
  return [...best].map(([name, ms]) => {
    const rate = (1000 / ms).toFixed(0).padStart(6);
    return `${name.padEnd(34)}${rate} a second ${ms.toFixed(2).padStart(8)} ms  × ${(ms / svg).toFixed(2)}`;
  });
}

function worksOf(): readonly Work[] {
  const notebook = notebookOf(NOTEBOOK);
  const plans = plansOf(notebook);
  const drawn = RECIPES.flatMap((recipe) => {
    const plan = plans.get(recipe.slug);
    return plan?.fits ? [{ recipe, plan, notebook }] : [];
  });
  const strips = stripsOf(notebook);
  const write = createSvgWriter(createSVGWindow());
  const groups = [{ title: "All", entries: drawn }];
  const pages = drawn.reduce((sum, { plan }) => sum + plan.pages.length, 0);
  return [
    work("page.svg, with its counts", drawn, (one) => write(pageScene(one))),
    work("page.pdf", drawn, (one) => pagePdf(one, SETTINGS)),
    work("strip.pdf, sheet and pocket", strips, (strip) =>
      stripPdf({ title: strip.title, strips: [strip], paper: "A4" }, SETTINGS),
    ),
    {
      ...work("a page of book.pdf", [groups], () =>
        bookPdf({ title: BOOK.title, notebook, groups, paper: "A4" }, SETTINGS),
      ),
      count: pages,
    },
    work("opening the fonts, once a run", [FONT_FILES], (files) =>
      readFonts({ normal: files.normal.map(fontFile), bold: files.bold.map(fontFile) }),
    ),
  ];
}

function work<T>(name: string, given: readonly T[], make: (one: T) => unknown): Work {
  return {
    name,
    count: given.length,
    async run() {
      for (const one of given) await make(one);
    },
  };
}
