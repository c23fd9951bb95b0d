/** The notebook opened flat: the pages of a set-up two by two, each distinct one drawn once. */

import type { WeekRule } from "../../calendar/week.ts";
import { thumbnailScene } from "../../draw/page/thumbnail-scene.ts";
import type { WriteSvg } from "../../draw/svg/write-svg.ts";
import { saySetupPage } from "../../issue/words/setup-words.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { type DrawnPage, daysOfPage, type Setup, type SetupPage } from "../../setup/setup.ts";
import { writeAddress } from "../address/hash-params.ts";
import { datesEntries } from "../address/span-address.ts";
import { rangeTitle } from "../pattern/span-words.ts";
import type { PageView, SpreadView } from "./setup-view.ts";

export interface SpreadSources {
  readonly notebook: Notebook;
  readonly write: WriteSvg;
  readonly rule: WeekRule;
}

/** An even page and the odd one after it face each other. */
export function spreadViews(setup: Setup, sources: SpreadSources): readonly SpreadView[] {
  const spreads = new Map<number, SpreadView>();
  const drawn = new Set<string>();
  for (const page of setup.pages) {
    const at = Math.floor(page.number / 2);
    const view = pageView(page, setup, { ...sources, drawn });
    spreads.set(at, { ...spreads.get(at), [page.side]: view });
  }
  return [...spreads.values()];
}

function pageView(
  page: SetupPage,
  setup: Setup,
  { notebook, write, rule, drawn: known }: SpreadSources & { readonly drawn: Set<string> },
): PageView {
  const { number, side, drawn } = page;
  if (!drawn) return { number, side, title: "", dates: "", hash: "" };
  const { pattern, dates } = drawn;
  const shown = daysOfPage(page);
  const title = setup.titles.get(pattern) ?? pattern;
  const picture = `picture-${drawn.plan}-${drawn.page}`;
  const isFirst = !known.has(picture);
  known.add(picture);
  const days = shown ? rangeTitle(shown, rule) : "";
  const named = { id: picture, title: saySetupPage(page, days ? `${title}, ${days}` : title) };
  return {
    number,
    side,
    title,
    dates: days,
    pattern,
    hash: dates ? writeAddress(datesEntries({ picked: dates, calendar: {} })) : "",
    picture,
    ...(isFirst && { svg: smallSvg(drawn, setup, { notebook, write, named }) }),
  };
}

function smallSvg(
  { plan: index, page }: DrawnPage,
  { plans }: Setup,
  {
    notebook,
    write,
    named,
  }: Omit<SpreadSources, "rule"> & {
    readonly named: { readonly id: string; readonly title: string };
  },
): string {
  const plan = plans[index];
  const drawn = plan?.pages[page];
  if (!plan || !drawn) throw new RangeError(`a set-up has no plan ${index}`);
  const scene = thumbnailScene({ plan: { ...plan, pages: [drawn] }, notebook });
  const svg = write({ ...scene, ...named }, "inline");
  // Other pages with this drawing refer to it.
  return svg.replace("<svg ", `<svg id="${named.id}" `);
}
