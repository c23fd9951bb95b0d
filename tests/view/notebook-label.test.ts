/** A notebook in few words, and an address that leaves it to the page. */
import { describe, expect, it } from "vitest";
import {
  addressOfNotebook,
  notebookLabel,
  withNotebook,
  withoutNotebook,
} from "../../src/view/address/notebook-label.ts";

describe("the label of an address", () => {
  it.each([
    ["#v=1&paper=A5&pitch=5&dots=24,35", "A5, 24 × 35"],
    ["#v=1&paper=A6&pitch=5&dots=20", "A6, 20 × 20"],
    ["#v=1&paper=120,180.5&pitch=5&dots=23,35&first=5", "120 × 180.5 mm, 23 × 35"],
    ["#v=1&paper=A5&pitch=5&dots=24,35&name=The+green+one", "The green one"],
    ["#v=1&pattern=two-row-week", undefined],
    ["", undefined],
  ])("%s is %s", (hash, label) => {
    expect(notebookLabel(hash)).toBe(label);
  });
});

describe("the address without its notebook", () => {
  it.each([
    ["#v=1&paper=A5&pitch=5&dots=24,35&name=X&pattern=week", "#v=1&pattern=week"],
    ["#v=1&from=week", "#v=1&from=week"],
    ["#v=1&paper=A5&pitch=5&dots=24&across=a,b&lanes=3", "#v=1&across=a,b&lanes=3"],
  ])("%s is %s", (hash, left) => {
    expect(withoutNotebook(hash)).toBe(left);
  });
});

describe("the address with another notebook and days", () => {
  const built = "#v=1&paper=A6&pitch=5&dots=20,28&name=X&from=week";
  it.each([
    ["", "", built],
    ["paper=A5&pitch=5&dots=24,35", "", "#v=1&from=week&paper=A5&pitch=5&dots=24,35"],
    ["", "dates=2027-05&week=sunday", `${built}&dates=2027-05&week=sunday`],
    ["paper=A5&dots=24", "dates=2027", "#v=1&from=week&paper=A5&dots=24&dates=2027"],
  ])("%j and %j", (notebook, dates, expected) => {
    expect(withNotebook(built, notebook, dates)).toBe(expected);
  });
});

describe("the notebook of an address", () => {
  it.each([
    ["#v=1&paper=A5&pitch=5&dots=24,35&name=X&pattern=week", "paper=A5&pitch=5&dots=24,35&name=X"],
    ["#v=1&pattern=week&dates=2027-05", ""],
    ["", ""],
  ])("%s is %s", (hash, notebook) => {
    expect(addressOfNotebook(hash)).toBe(notebook);
  });
});
