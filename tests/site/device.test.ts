/** What is kept on the device: by book and by form, by several tabs at once, and where a browser will not keep it. */
import { describe, expect, it } from "vitest";
import { openDevice } from "../../site/script/device/device.ts";
import { keptText, openEntry } from "../../site/script/device/kept-entry.ts";
import { BOOK_SCRIPT, openWebSpace } from "../setup/web-space.ts";

/** What the form without a version kept for every book of a web space. */
const FORM_1 = {
  "spanbook.notebook": "a6",
  "spanbook.fit": "#v=1&paper=A6&pitch=5&dots=19,28&pattern=seed-list&across=seed-list",
  "spanbook.desk": "#v=1&text=abc",
  "spanbook.drawing": "labels counts",
  "spanbook.hand": "left",
  "spanbook.printer": "1.01 1",
  "spanbook.screen": "4.0000 1",
};

const NAMES = [
  ["book-notebook", FORM_1["spanbook.notebook"]],
  ["notebook", FORM_1["spanbook.fit"]],
  ["strip", FORM_1["spanbook.fit"]],
  ["pattern", FORM_1["spanbook.fit"]],
  ["recipe", FORM_1["spanbook.desk"]],
  ["drawing", FORM_1["spanbook.drawing"]],
  ["hand", FORM_1["spanbook.hand"]],
  ["printer", FORM_1["spanbook.printer"]],
  ["screen", FORM_1["spanbook.screen"]],
] as const;

describe("what the form before this one kept", () => {
  it.each(NAMES)("is there as %s", (name, text) => {
    const device = openDevice(openWebSpace(FORM_1).openTab(), BOOK_SCRIPT);
    expect(device.get(name)).toBe(text);
  });

  it("is taken over once: what is changed or forgotten then stays so", () => {
    const { items, openTab } = openWebSpace(FORM_1);
    openDevice(openTab(), BOOK_SCRIPT).set("hand", "right");
    expect(openDevice(openTab(), BOOK_SCRIPT).get("hand")).toBe("right");
    openDevice(openTab(), BOOK_SCRIPT).clear();
    expect(openDevice(openTab(), BOOK_SCRIPT).get("hand")).toBeUndefined();
    expect([...items.values()]).toEqual(["2"]);
  });

  it("is for every book of the web space, each of which goes on by itself", () => {
    const { openTab } = openWebSpace(FORM_1);
    openDevice(openTab(), "https://plots.example/one/assets/fit.js").set("hand", "right");
    const other = openDevice(openTab(), "https://plots.example/two/assets/fit.js");
    expect(other.get("hand")).toBe("left");
  });
});

describe("two books on one web space", () => {
  it.each([
    [
      "beside each other",
      "https://plots.example/one/assets/a.js",
      "https://plots.example/two/assets/a.js",
    ],
    [
      "one inside the other",
      "https://plots.example/assets/a.js",
      "https://plots.example/new/assets/a.js",
    ],
    [
      "named alike",
      "https://plots.example/a/assets/a.js",
      "https://plots.example/a%20hand/assets/a.js",
    ],
    ["on disk", "file:///home/one/assets/a.js", "file:///home/two/assets/a.js"],
  ])("%s do not see each other's, and one forgets only its own", (_, one, two) => {
    const { openTab } = openWebSpace();
    const [first, second] = [openDevice(openTab(), one), openDevice(openTab(), two)];
    first.set("hand", "left");
    expect(second.get("hand")).toBeUndefined();
    second.set("hand", "right");
    first.clear();
    expect([first.get("hand"), second.get("hand")]).toEqual([undefined, "right"]);
  });

  it("is one where two scripts of a book ask", () => {
    const { openTab } = openWebSpace();
    openDevice(openTab(), "https://plots.example/one/assets/fit.js").set("hand", "left");
    const other = openDevice(openTab(), "https://plots.example/one/assets/book.js?v=2");
    expect(other.get("hand")).toBe("left");
  });
});

describe("a browser that keeps nothing", () => {
  it.each([
    ["refuses", { isRefused: true }],
    ["has no room", { isFull: true }],
  ])("and %s: what is kept lasts as long as the page, which can tell", (_, refusals) => {
    const { openTab } = openWebSpace(FORM_1, refusals);
    const device = openDevice(openTab(), BOOK_SCRIPT);
    device.set("hand", "right");
    expect(device.get("hand")).toBe("right");
    expect(device.persists()).toBe(false);
    device.clear();
    expect(device.get("hand")).toBeUndefined();
    expect(device.persists()).toBe(false);
  });

  it("is not one that keeps", () => {
    const device = openDevice(openWebSpace().openTab(), BOOK_SCRIPT);
    expect(device.persists()).toBe(true);
    device.set("hand", "left");
    expect(device.persists()).toBe(true);
  });

  it("is told apart from one with what a later edition keeps, which is left as it is", () => {
    const kept = { "spanbook / version": "3", "spanbook / hand": "both" };
    const { items, openTab } = openWebSpace(kept);
    const device = openDevice(openTab(), BOOK_SCRIPT);
    expect(device.get("hand")).toBeUndefined();
    device.set("hand", "left");
    device.clear();
    device.set("hand", "right");
    expect([device.get("hand"), device.persists()]).toEqual(["right", false]);
    expect(Object.fromEntries(items)).toEqual(kept);
  });
});

/** Tabs of one web space on one kept thing; `seen` is what each was told that another made of it. */
function openTabs(...tabs: readonly boolean[]) {
  const { openTab } = openWebSpace();
  return tabs.map((isShown) => {
    const device = openDevice(openTab(), BOOK_SCRIPT);
    const entry = openEntry(device, "strip", { isShown });
    const seen: string[] = [];
    entry.subscribe((text) => seen.push(text));
    return { seen, keep: entry.keep, kept: () => keptText(device, "strip") };
  });
}

describe("a kept thing in two tabs", () => {
  it("that both show is the same in both, whoever changes it", () => {
    const [one, two] = openTabs(true, true);
    one?.keep("a");
    two?.keep("a b");
    one?.keep("a b c");
    expect([one?.seen, two?.seen]).toEqual([["a b"], ["a", "a b c"]]);
    expect(two?.kept()).toBe("a b c");
  });

  it("is left alone by a tab that shows something else, until that is changed", () => {
    const [mine, visit] = openTabs(true, false);
    mine?.keep("mine");
    expect(visit?.seen).toEqual([]);
    visit?.keep("theirs");
    expect(mine?.seen).toEqual([]);
    mine?.keep("mine again");
    expect([visit?.seen, visit?.kept()]).toEqual([[], "mine again"]);
  });

  it("is gone on with by a tab that comes back to it", () => {
    const [mine, visit] = openTabs(true, false);
    mine?.keep("mine");
    visit?.keep("mine");
    mine?.keep("mine, and more");
    expect(visit?.seen).toEqual(["mine, and more"]);
  });

  it("of which one is begun anew three times over is followed by nobody who shows an older one", () => {
    const [first, second, third] = openTabs(true, false, false);
    first?.keep("1");
    second?.keep("2");
    third?.keep("3");
    second?.keep("2, and more");
    expect([first?.seen, second?.seen, third?.seen]).toEqual([[], [], []]);
  });
});
