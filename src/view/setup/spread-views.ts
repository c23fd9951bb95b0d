/** The notebook opened flat: the pages of a set-up two by two, each distinct one drawn once. */

import type { WeekRule } from "../../calendar/week.ts";
import { thumbnailScene } from "../../draw/page/thumbnail-scene.ts";
import type { WriteSvg } from "../../draw/svg/write-svg.ts";
import type { DatedEvent } from "../../events/events-in.ts";
import { saySetupPage } from "../../issue/words/setup-words.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { type DrawnPage, daysOfPage, type Setup, type SetupPage } from "../../setup/setup.ts";
import { writeAddress } from "../address/hash-params.ts";
import { datesEntries } from "../address/span-address.ts";
import { rangeTitle } from "../pattern/span-words.ts";
import type { PageView, SpreadView } from "./setup-view.ts";

export interface SpreadSources {
  readonly notebook: Notebook;
  readonly rule: WeekRule;
  /** On its days, from calendar files. */
  readonly events?: readonly DatedEvent[];
  /** Left out: the pictures are drawn when there is time, by `smallPicture`. */
  readonly write?: WriteSvg;
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
  { drawn: known, write, ...sources }: SpreadSources & { readonly drawn: Set<string> },
): PageView {
  const { number, side, drawn } = page;
  if (!drawn) return { number, side, title: "", dates: "", hash: "" };
  const { pattern, dates } = drawn;
  const shown = daysOfPage(page);
  const title = setup.titles.get(pattern) ?? pattern;
  const picture = pictureId(drawn);
  const isFirst = !known.has(picture);
  known.add(picture);
  const days = shown ? rangeTitle(shown, sources.rule) : "";
  return {
    number,
    side,
    title,
    dates: days,
    pattern,
    hash: dates ? writeAddress(datesEntries({ picked: dates, calendar: {} })) : "",
    picture,
    ...(isFirst && write && { svg: smallPicture(page, setup, { ...sources, write }) }),
  };
}

/** The small drawing of a page; "" where it stays free. Other pages with this drawing refer to its id. */
export function smallPicture(
  page: SetupPage,
  { plans, titles }: Setup,
  { notebook, write, rule, events = [] }: SpreadSources & { readonly write: WriteSvg },
): string {
  const { drawn } = page;
  const plan = drawn && plans[drawn.plan];
  const half = plan?.pages[drawn?.page ?? 0];
  if (!drawn || !plan || !half) return "";
  const days = daysOfPage(page);
  const name = titles.get(drawn.pattern) ?? drawn.pattern;
  const title = saySetupPage(page, days ? `${name}, ${rangeTitle(days, rule)}` : name);
  const id = pictureId(drawn);
  const scene = thumbnailScene({ plan: { ...plan, pages: [half] }, notebook, events });
  return write({ ...scene, id, title }, "inline").replace("<svg ", `<svg id="${id}" `);
}

/** The id of a page’s drawing: pages with one are drawn alike. */
export function pictureId({ plan, page }: DrawnPage): string {
  return `picture-${plan}-${page}`;
}
