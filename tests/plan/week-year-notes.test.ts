/** A week's number beside the calendar year is noted: around New Year the week may count to the other one. */
import { describe, expect, it } from "vitest";
import { sayPlanNote } from "../../src/issue/words/say-plan-note.ts";
import { weekYearNotes } from "../../src/plan/explain/week-year-notes.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";

function notesOf(page: string) {
  const text = `---\ntitle: Tried\npurpose: week\ndates: week\npage: ${page}\n---\n`;
  const reading = readRecipe({ path: "patterns/tried.md", text });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return weekYearNotes(reading.value, 0);
}

describe("a label with", () => {
  it.each([
    ["the week and the year", "{label: '{week}/{year}'}", ["{week}/{year}"]],
    ["the week and its own year", "{label: '{week}/{week year}'}", []],
    ["the year alone", "{label: '{year}'}", []],
    ["both, in a track", "{rows: {count: 2, each: {label: '{year}: {week}'}}}", ["{year}: {week}"]],
  ])("%s", (_, page, labels) => {
    expect(notesOf(page).map(({ label }) => label)).toEqual(labels);
  });
});

it("says which year is meant", () => {
  const [note] = notesOf("{label: '{week}/{year}'}");
  expect(note && sayPlanNote(note)).toBe(
    "The label “{week}/{year}” has a week’s number beside the year. Around New Year a week may count to the other year: {week year} is the year of the week.",
  );
});
