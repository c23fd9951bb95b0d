/** The layouts of a set-up: pages that are marked alike, in the order that picks the strip up least. */
import type { WeekRule } from "../../calendar/week.ts";
import { sayMarks } from "../../issue/words/say-stroke.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { drawOrder, type Ticks } from "../../plan/order/draw-order.ts";
import { daysOfPage, type Setup, type SetupPage } from "../../setup/setup.ts";
import { rangeTitle } from "../pattern/span-words.ts";
import type { LayoutView } from "./setup-view.ts";

/** Pages with the same marks. */
interface Layout {
  readonly ticks: readonly Ticks[];
  readonly pages: readonly SetupPage[];
}

/** Each layout once; after one comes that which shares most marks with it, so that the strip lies nearly as it lay. */
export function layoutViews(
  setup: Setup,
  notebook: Notebook,
  rule: WeekRule,
): readonly LayoutView[] {
  const layouts = chained(layoutsOf(setup, notebook));
  return layouts.map((layout) => ({
    titles: titlesOf(layout, { layouts, setup }),
    marks: layout.ticks.filter(({ positions }) => positions.length > 0).map(sayMarks),
    pages: layout.pages.map((page) => ({ number: page.number, words: wordsOf(page, setup, rule) })),
  }));
}

function layoutsOf(setup: Setup, notebook: Notebook): readonly Layout[] {
  const known = new Map<string, readonly Ticks[]>();
  const layouts = new Map<string, Layout>();
  for (const page of setup.pages) {
    if (!page.drawn) continue;
    const { plan, page: index } = page.drawn;
    const drawn = setup.plans[plan]?.pages[index];
    if (!drawn) continue;
    const ticks = known.get(`${plan} ${index}`) ?? drawOrder(drawn, notebook).ticks;
    known.set(`${plan} ${index}`, ticks);
    const key = ticks.map(({ positions }) => positions.join()).join(" ");
    const before = layouts.get(key);
    layouts.set(key, { ticks, pages: [...(before?.pages ?? []), page] });
  }
  return [...layouts.values()];
}

/** From the first on, always the nearest that is left; of equal ones the earlier. */
function chained(layouts: readonly Layout[]): readonly Layout[] {
  const left = [...layouts];
  const chain: Layout[] = [];
  for (let next = left.shift(); next; next = takeNearest(next, left)) chain.push(next);
  return chain;
}

function takeNearest(to: Layout, left: Layout[]): Layout | undefined {
  let [best, most] = [0, -1];
  for (const [index, layout] of left.entries()) {
    const shared = sharedMarks(to, layout);
    if (shared > most) [best, most] = [index, shared];
  }
  return left.splice(best, 1)[0];
}

function sharedMarks(a: Layout, b: Layout): number {
  return a.ticks.reduce((sum, { positions }, index) => {
    const others = new Set(b.ticks[index]?.positions);
    return sum + positions.filter((position) => others.has(position)).length;
  }, 0);
}

/** Those of its patterns. Of one that is marked in another way on the facing side, each side is told. */
function titlesOf(
  layout: Layout,
  { layouts, setup }: { readonly layouts: readonly Layout[]; readonly setup: Setup },
): readonly string[] {
  const sideIn = ({ pages }: Layout, title: string) => {
    const own = pages.filter((page) => titleOf(page, setup) === title);
    return own.every(({ side }) => side === own[0]?.side) ? own[0]?.side : undefined;
  };
  return [...new Set(layout.pages.map((page) => titleOf(page, setup)))].map((title) => {
    const side = sideIn(layout, title);
    const facing = side === "left" ? "right" : "left";
    const isTold = side && layouts.some((other) => sideIn(other, title) === facing);
    return isTold ? `${title}, ${side} pages` : title;
  });
}

function titleOf({ drawn }: SetupPage, { titles }: Setup): string {
  return drawn ? (titles.get(drawn.pattern) ?? drawn.pattern) : "";
}

function wordsOf(page: SetupPage, setup: Setup, rule: WeekRule): string {
  const title = titleOf(page, setup);
  const half = setup.plans[page.drawn?.plan ?? -1]?.pages.length === 2 ? `, ${page.side} page` : "";
  const dates = daysOfPage(page);
  return `${title}${half}${dates ? `, ${rangeTitle(dates, rule)}` : ""}`;
}
