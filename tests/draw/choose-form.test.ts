/** Names in labels: the longest form that fits, one for all boxes that come from one place of the recipe. */
import { describe, expect, it } from "vitest";
import { namesOf } from "../../src/calendar/names.ts";
import { readSpan } from "../../src/calendar/read-span.ts";
import { ISO_WEEKS } from "../../src/calendar/week.ts";
import { pageScene } from "../../src/draw/page/page-scene.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";

import { axisOf, notebookWith } from "./plan-of.ts";

/** The texts of a drawn page: `across` and `down` are its steps of 5 mm. */
function texts(across: number, page: string, language = "en"): readonly string[] {
  const text = `---\ntitle: Tried\npurpose: month\ndates: month\npage: ${page}\n---\n`;
  const reading = readRecipe({ path: "patterns/tried.md", text });
  const span = readSpan("2027-03");
  const names = namesOf(language);
  if (!reading.ok || !span.ok || !names) throw new Error(JSON.stringify(reading));
  const recipe = reading.value;
  const notebook = notebookWith(axisOf(5 * (across + 2), across + 1), axisOf(100, 19));
  const when = { rule: ISO_WEEKS, names, span: { kind: "month" as const, ...span.value } };
  const plan = planPattern(recipe, notebook, when);
  if (!plan.fits) throw new Error("it does not fit");
  return pageScene({ plan, recipe, notebook }).marks.flatMap((mark) =>
    mark.kind === "text" && /label|heading/.test(mark.role) ? [mark.text] : [],
  );
}

const WEEKDAYS =
  "{rows: {tracks: [{columns: {count: weekdays, each: {label: '{weekday}'}}, steps: 1}, {share: 1}]}}";

describe("the names of the days over columns of", () => {
  it.each([
    [28, "en", "Monday Tuesday Wednesday Thursday Friday Saturday Sunday"],
    [14, "en", "Mon Tue Wed Thu Fri Sat Sun"],
    [7, "en", "Mo Tu We Th Fr Sa Su"],
    [14, "de", "Mo Di Mi Do Fr Sa So"],
  ])("%i steps for seven, in %s, are %s", (across, language, names) => {
    expect(texts(across, WEEKDAYS, language).join(" ")).toBe(names);
  });

  it("are of one form, whatever the longest of them needs", () => {
    const page = "{rows: {count: months}}".replace(
      "months",
      "weekdays, each: {label: '{weekday}'}",
    );
    const lengths = texts(30, page).map((name) => name.length);
    expect(Math.max(...lengths)).toBe("Wednesday".length);
  });
});

it("two places of the recipe choose for themselves", () => {
  const page = `{rows: {tracks: [{label: '{month} {year}', steps: 2}, ${WEEKDAYS.slice(1, -1).replace("rows: {tracks: [", "").split(", {share")[0]}]}}`;
  const [heading, ...days] = texts(7, page);
  expect(heading).toBe("March 2027");
  expect(days).toEqual(["Mo", "Tu", "We", "Th", "Fr", "Sa", "Su"]);
});
