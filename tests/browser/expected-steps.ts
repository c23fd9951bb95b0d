/** What drawing along should show, step by step: from the plan, and from the millimetres that the book puts out. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { sayMarks, sayStroke } from "../../src/issue/words/say-stroke.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import {
  type DrawOrder,
  drawOrder,
  type Hand,
  type Stroke,
} from "../../src/plan/order/draw-order.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import { demoContent } from "../setup/demo-content.ts";
import { bookWith } from "./test-browser.ts";

const content = await demoContent();
const { recipes, notebooks } = content;

export interface Told {
  readonly hash: string;
  readonly count: string;
  readonly words: string;
  /** The line as path data; "" for marks. */
  readonly d: string;
}

/** A page of the demo book, and the hand that draws. */
export interface Drawn {
  readonly pattern: string;
  readonly notebook: string;
  readonly hand?: Hand;
}

/** Every step in its order. */
export function expectedSteps({ pattern, notebook: slug, hand }: Drawn) {
  const recipe = recipes.find((one) => one.slug === pattern);
  const notebook = notebooks.find((one) => one.slug === slug);
  if (!recipe || !notebook) throw new Error(`the demo book has no ${pattern} on ${slug}`);
  const plan = planPattern(recipe, notebook);
  if (!plan.fits) throw new Error(`${pattern} does not fit ${slug}`);
  const orders = plan.pages.map((page) => drawOrder(page, notebook, hand));
  const lineOf = lineReader(slug);
  const kinds = { marks: 0, stroke: 0 };
  const steps = orders.flatMap((order, page) => [
    ...order.ticks.map((ticks) => step("marks", order, sayMarks(ticks), "")),
    ...order.strokes.map((line) => step("stroke", order, told(line, notebook), lineOf(line, page))),
  ]);
  function step(kind: keyof typeof kinds, { side }: DrawOrder, words: string, d: string) {
    kinds[kind] += 1;
    return { kind, side, number: kinds[kind], words, d };
  }
  return steps.map(({ kind, side, number, words, d }): Told => {
    const count = `${side === "single" ? "" : `${side} page: `}${kind === "stroke" ? "line" : kind} ${number} of ${kinds[kind]}`;
    const sentence = count.slice(0, 1).toUpperCase() + count.slice(1);
    return { hash: `#${kind}=${number}`, count: sentence, words, d };
  });
}

function told(stroke: Stroke, notebook: Notebook): string {
  return sayStroke(stroke, notebook.axes);
}

/** Reads positions off `notebook.json`; the second page of a spread lies one paper's width to the right. */
function lineReader(notebook: string): (stroke: Stroke, page: number) => string {
  const path = `notebooks/${notebook}/notebook.json`;
  const facts = JSON.parse(readFileSync(join(bookWith(path), path), "utf8"));
  const [across, down]: readonly (readonly number[])[] = facts.axes.map(
    (axis: { readonly mm: readonly number[] }) => axis.mm,
  );
  return ({ axis, at, start, end }, page) => {
    const x = (position: number) => thousandths(across?.[position], page * facts.paper.across);
    const y = (position: number) => thousandths(down?.[position], 0);
    return axis === "across"
      ? `M${x(start)} ${y(at)}H${x(end)}`
      : `M${x(at)} ${y(start)}V${y(end)}`;
  };
}

function thousandths(mm = Number.NaN, offset: number): number {
  return Math.round((mm + offset) * 1000) / 1000;
}
