/** A copy or another title changes a title and a file's name: nothing that names something else. */
import { describe, expect, it } from "vitest";
import { readRecipe } from "../../../src/recipe/read/read-recipe.ts";
import { type KeptFile, keptPath } from "../../../src/view/kept/kept-file.ts";
import { titleOf } from "../../../src/view/kept/read-content-files.ts";
import { copiedFile } from "../../../src/view/kept/rename-file.ts";

const LAYOUT: KeptFile = {
  path: keptPath("patterns", "sleep-month"),
  text: "---\ntitle: Sleep month # mine\npurpose: tracker\npage: {columns: {count: 2, labels: [title, Sleep]}}\n---\nNights.\n",
};
const NOTEBOOK: KeptFile = {
  path: keptPath("notebooks", "thin"),
  text: "---\ntitle: Thin\npaper: A5\npitch: 5\ndots: [24, 35]\n---\n",
};
const STRIP: KeptFile = {
  path: keptPath("strips", "mine"),
  text: "---\ntitle: Mine\nacross: [sleep-month, {title: Thirds, split: {count: 3}}]\nlanes: 3\n---\n",
};
const SETUP: KeptFile = {
  path: keptPath("setups", "march"),
  text: "---\ntitle: March\ndates: 2027-03\npages: [sleep-month]\n---\n",
};

describe("a copy", () => {
  it.each<[string, KeptFile, string, string]>([
    ["a layout", LAYOUT, "patterns/sleep-month-copy.md", 'title: "Sleep month (copy)" # mine'],
    ["a notebook", NOTEBOOK, "notebooks/thin-copy.md", 'title: "Thin (copy)"'],
    ["a strip", STRIP, "strips/mine-copy.md", 'title: "Mine (copy)"'],
    ["a set-up", SETUP, "setups/march-copy.md", 'title: "March (copy)"'],
  ])("of %s has a name and a title of its own, and else is the same", (_, file, path, line) => {
    const copy = copiedFile(file, titleOf(file), []);
    expect(copy.path).toBe(path);
    expect(copy.text.replaceAll('"', "")).toContain(line.replaceAll('"', ""));
    const rest = (text: string) => text.split("\n").filter((each) => !each.startsWith("title:"));
    expect(rest(copy.text)).toEqual(rest(file.text));
    expect(titleOf(copy)).toBe(`${titleOf(file)} (copy)`);
  });

  it("of a copy takes the next free name", () => {
    const taken = ["sleep-month", "sleep-month-copy"];
    expect(copiedFile(LAYOUT, "Sleep month", taken).path).toBe("patterns/sleep-month-copy-2.md");
  });

  it("of the longest title is a file that can be read", () => {
    const text = LAYOUT.text.replace("Sleep month", "x".repeat(200));
    const copy = copiedFile({ ...LAYOUT, text }, "x".repeat(200), []);
    expect(readRecipe(copy).ok).toBe(true);
    expect(titleOf(copy)).toMatch(/^x+ \(copy\)$/);
  });
});
