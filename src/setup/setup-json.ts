/** A set-up as the book puts it out for other programs: `setup.json`. */
import type { DayRange } from "../calendar/span.ts";
import { saySetupLeftOut } from "../issue/words/say-setup-left-out.ts";
import { fittingJson, isoRange } from "../plan/plan-json.ts";
import type { LeftOutPlace, Setup, SetupPage } from "./setup.ts";
import { type ContentsLine, setupContents, setupUses } from "./setup-contents.ts";

/** The text of the file, the same bytes in the build and in the page. */
export function setupJson(setup: Setup): string {
  const { recipe, notebook, pages, plans, leftOut } = setup;
  const data = {
    setup: recipe.slug,
    notebook: notebook.slug,
    dates: isoRange(recipe.dates),
    pages: pages.map(page),
    plans: plans.map(fittingJson),
    contents: setupContents(setup).map(line),
    uses: [...setupUses(setup)].map(([pattern, times]) => ({ pattern, times })),
    left_out: leftOut.map(left),
  };
  return `${JSON.stringify(data, null, 1)}\n`;
}

function page({ number, side, drawn }: SetupPage) {
  if (!drawn) return { number, pattern: null };
  const { pattern, dates, plan } = drawn;
  return { number, pattern, side, dates: daysJson(dates), plan };
}

function line({ title, dates, from, to }: ContentsLine) {
  return { title, dates: daysJson(dates), from, to };
}

function left({ pattern, dates, why }: LeftOutPlace) {
  return { pattern, ...(dates && { dates: isoRange(dates) }), why: saySetupLeftOut(why) };
}

function daysJson(dates: DayRange | undefined) {
  return dates ? isoRange(dates) : null;
}
