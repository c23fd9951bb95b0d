/** Which notebook a page opens on: that of its address, else the kept one, else the one that the book begins with. */
import { describe, expect, it } from "vitest";
import { startFit } from "../../site/script/app/initial-state.ts";
import { openDevice } from "../../site/script/device/device.ts";
import { replaceEntry } from "../../site/script/device/kept-entry.ts";
import { readNotebook } from "../../src/notebook/read-notebook.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { openCatalogue } from "../../src/view/catalogue.ts";
import { BOOK_SCRIPT, openWebSpace } from "../setup/web-space.ts";

const notebook = (slug: string, paper: string) => {
  const text = `---\ntitle: ${slug}\npaper: ${paper}\npitch: 5\ndots: [12, 14]\n---\n`;
  const reading = readNotebook({ path: `notebooks/${slug}.md`, text });
  return reading.ok ? [reading.value] : [];
};

const WEEK = "---\ntitle: Week\npurpose: week\npage: {rows: 7}\n---\n";
const reading = readRecipe({ path: "patterns/week.md", text: WEEK });
const catalogue = openCatalogue({
  notebooks: [...notebook("shed", "A6"), ...notebook("hut", "A7")],
  recipes: reading.ok ? [reading.value] : [],
  strips: [],
});

describe("the notebook of a page", () => {
  const OWN = "#v=1&paper=B6&pitch=5&dots=24,35&first=5,5";
  it.each([
    ["that the book begins with", "", {}, "A6"],
    ["of the book that was chosen before", "", { "book-notebook": "hut" }, "A7"],
    ["that is kept", "", { notebook: OWN, "book-notebook": "hut" }, "B6"],
    ["that the address brings", "#v=1&paper=A5&pitch=5&dots=26,38", { notebook: OWN }, "A5"],
    [
      "that is kept, where an address brings only a pattern",
      "#v=1&pattern=week",
      { notebook: OWN },
      "B6",
    ],
    [
      "that the book begins with, where what is kept is spoilt",
      "",
      { notebook: "#v=1&paper=" },
      "A6",
    ],
  ] as const)("is the one %s", (_, hash, kept, paper) => {
    const device = openDevice(openWebSpace({}).openTab(), BOOK_SCRIPT);
    for (const [name, text] of Object.entries(kept)) {
      if (name === "notebook") replaceEntry(device, name, text);
      else device.set("book-notebook", text);
    }
    expect(startFit(hash, device, catalogue).fit.notebook.paperName).toBe(paper);
  });
});
