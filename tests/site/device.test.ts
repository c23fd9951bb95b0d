/** What is kept on the device: by book and by form, by several tabs at once, and where a browser will not keep it. */
import { describe, expect, it } from "vitest";
import { openClearableDevice, openDevice } from "../../site/script/device/device.ts";
import { keptText, openEntry } from "../../site/script/device/kept-entry.ts";
import { keptFiles, keptSlugs, subscribeFiles } from "../../site/script/device/kept-files.ts";
import { asKeptPath, KEPT_KINDS } from "../../src/view/kept/kept-file.ts";
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
    openClearableDevice(openTab(), BOOK_SCRIPT).set("hand", "right");
    expect(openClearableDevice(openTab(), BOOK_SCRIPT).get("hand")).toBe("right");
    openClearableDevice(openTab(), BOOK_SCRIPT).clear();
    expect(openClearableDevice(openTab(), BOOK_SCRIPT).get("hand")).toBeUndefined();
    expect([...items.values()]).toEqual(["4"]);
  });

  it("is brought back as it was by whoever cleared it", () => {
    const { items, openTab } = openWebSpace(FORM_1);
    const device = openClearableDevice(openTab(), BOOK_SCRIPT);
    device.set("patterns/week.md", "w");
    const before = Object.fromEntries(items);
    const restore = device.clear();
    expect(device.get("patterns/week.md")).toBeUndefined();
    restore();
    expect(Object.fromEntries(items)).toEqual(before);
  });

  it("is for every book of the web space, each of which goes on by itself", () => {
    const { openTab } = openWebSpace(FORM_1);
    openDevice(openTab(), "https://plots.example/one/assets/fit.js").set("hand", "right");
    const other = openDevice(openTab(), "https://plots.example/two/assets/fit.js");
    expect(other.get("hand")).toBe("left");
  });
});

/** What form 2 kept: one thing of each kind. */
const FORM_2 = {
  "spanbook / version": "2",
  "spanbook / book-notebook": "a6",
  "spanbook / notebook": "4 #v=1&paper=A6&pitch=5&dots=19,28",
  "spanbook / strip": "2 #v=1&across=seed-list",
  "spanbook / pattern": "#v=1&pattern=seed-list",
  "spanbook / dates": "#v=1&span=2027-03",
  "spanbook / recipe": "7 #v=1&paper=A6&pitch=5&dots=19,28&text=abc",
  "spanbook / count-habits": "across",
  "spanbook / printer": "1.01 1 A4",
} as const;

describe("what form 2 kept", () => {
  it("is there under its names, and the first page of this form says so", () => {
    const { items, openTab } = openWebSpace(FORM_2);
    const device = openDevice(openTab(), BOOK_SCRIPT);
    expect(device.get("notebook")).toBe(FORM_2["spanbook / notebook"]);
    expect(keptText(device, "recipe")).toBe("#v=1&paper=A6&pitch=5&dots=19,28&text=abc");
    expect(Object.fromEntries(items)).toEqual({ ...FORM_2, "spanbook / version": "4" });
  });

  it("has no lists yet", () => {
    const device = openDevice(openWebSpace(FORM_2).openTab(), BOOK_SCRIPT);
    expect(KEPT_KINDS.flatMap((kind) => keptFiles(device, kind))).toEqual([]);
  });
});

/** What form 3 kept beside that: lists of files, and ticks. */
const FORM_3 = {
  ...FORM_2,
  "spanbook / version": "3",
  "spanbook / setups/march.md": "s",
  "spanbook / ticks": "march-on-the-lane/a5 42 44",
} as const;

describe("what form 3 kept", () => {
  it("is there as it was, and a set-up in use comes beside it", () => {
    const { items, openTab } = openWebSpace(FORM_3);
    const device = openDevice(openTab(), BOOK_SCRIPT);
    expect(Object.fromEntries(items)).toEqual({ ...FORM_3, "spanbook / version": "4" });
    expect(keptSlugs(device, "setups")).toEqual(["march"]);
    expect(device.get("setup")).toBeUndefined();
    device.set("setup", "1 #v=1&dates=2027-03");
    expect(keptText(device, "setup")).toBe("#v=1&dates=2027-03");
    expect(device.get("ticks")).toBe("march-on-the-lane/a5 42 44");
  });

  it("is cleared and brought back with all the rest", () => {
    const { items, openTab } = openWebSpace({ ...FORM_3, "spanbook / setup": "1 #v=1" });
    const device = openClearableDevice(openTab(), BOOK_SCRIPT);
    const before = Object.fromEntries(items);
    const restore = device.clear();
    expect(device.names()).toEqual(["version"]);
    restore();
    expect(Object.fromEntries(items)).toEqual(before);
  });
});

describe("files that are kept", () => {
  it("are listed by kind and name, and a removed one is gone", () => {
    const device = openDevice(openWebSpace().openTab(), BOOK_SCRIPT);
    device.set("patterns/week.md", "w");
    device.set("strips/every-day.md", "s");
    device.set("patterns/week-2.md", "w2");
    device.set("patterns/habits.md", "h");
    expect(keptFiles(device, "patterns")).toEqual([
      { path: "patterns/habits.md", text: "h" },
      { path: "patterns/week.md", text: "w" },
      { path: "patterns/week-2.md", text: "w2" },
    ]);
    device.remove("patterns/habits.md");
    expect(keptSlugs(device, "patterns")).toEqual(["week", "week-2"]);
    expect(device.get("patterns/habits.md")).toBeUndefined();
  });

  it("are each tab's at once, of this book alone", () => {
    const { openTab } = openWebSpace();
    const [one, two] = [openDevice(openTab(), BOOK_SCRIPT), openDevice(openTab(), BOOK_SCRIPT)];
    const other = openDevice(openTab(), "https://plots.example/two/assets/book.js");
    const told: string[] = [];
    subscribeFiles(two, () => told.push(keptSlugs(two, "notebooks").join(" ")));
    one.set("notebooks/mine.md", "m");
    one.set("hand", "left");
    one.remove("notebooks/mine.md");
    expect(told).toEqual(["mine", ""]);
    expect(keptSlugs(other, "notebooks")).toEqual([]);
  });

  it.each([
    ["refuses", { isRefused: true }],
    ["has no room", { isFull: true }],
  ])("last as long as the page where the browser %s", (_, refusals) => {
    const device = openDevice(openWebSpace({}, refusals).openTab(), BOOK_SCRIPT);
    device.set("patterns/week.md", "w");
    expect(keptSlugs(device, "patterns")).toEqual(["week"]);
    expect(device.persists()).toBe(false);
    device.remove("patterns/week.md");
    expect(keptSlugs(device, "patterns")).toEqual([]);
  });

  it.each(["patterns/Week.md", "patterns/../x.md", "patterns/week", "recipes/week.md", "week.md"])(
    "are none under the name %s",
    (name) => {
      const { openTab } = openWebSpace({ [`spanbook / ${name}`]: "x", "spanbook / version": "4" });
      const device = openDevice(openTab(), BOOK_SCRIPT);
      expect(KEPT_KINDS.flatMap((kind) => keptFiles(device, kind))).toEqual([]);
      expect(asKeptPath(name)).toBeUndefined();
    },
  );
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
    const [first, second] = [
      openClearableDevice(openTab(), one),
      openClearableDevice(openTab(), two),
    ];
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
    const device = openClearableDevice(openTab(), BOOK_SCRIPT);
    device.set("hand", "right");
    expect(device.get("hand")).toBe("right");
    expect(device.persists()).toBe(false);
    device.clear();
    expect(device.get("hand")).toBeUndefined();
    expect(device.persists()).toBe(false);
  });

  it("has room for so much: what found none is there in the page, what was kept before at the next visit", () => {
    const { items, openTab } = openWebSpace({}, { room: 200 });
    const device = openDevice(openTab(), BOOK_SCRIPT);
    device.set("patterns/week.md", "w".repeat(60));
    device.set("hand", "left");
    const before = Object.fromEntries(items);
    device.set("patterns/week.md", "v".repeat(160));
    expect(device.get("patterns/week.md")).toBe("v".repeat(160));
    expect(device.persists()).toBe(false);
    expect(Object.fromEntries(items)).toEqual(before);
    expect(openDevice(openTab(), BOOK_SCRIPT).get("patterns/week.md")).toBe("w".repeat(60));
    device.set("patterns/week.md", "u".repeat(70));
    expect(device.persists()).toBe(true);
    expect(openDevice(openTab(), BOOK_SCRIPT).get("patterns/week.md")).toBe("u".repeat(70));
  });

  it("is not one that keeps", () => {
    const device = openDevice(openWebSpace().openTab(), BOOK_SCRIPT);
    expect(device.persists()).toBe(true);
    device.set("hand", "left");
    expect(device.persists()).toBe(true);
  });

  it("is told apart from one with what a later edition keeps, which is left as it is", () => {
    const kept = { "spanbook / version": "5", "spanbook / hand": "both" };
    const { items, openTab } = openWebSpace(kept);
    const device = openClearableDevice(openTab(), BOOK_SCRIPT);
    expect(device.get("hand")).toBeUndefined();
    device.set("hand", "left");
    device.clear();
    device.set("hand", "right");
    expect([device.get("hand"), device.persists()]).toEqual(["right", false]);
    expect(Object.fromEntries(items)).toEqual(kept);
  });
});

/** Tabs of one web space that show one kept thing, or begin with something else that came with a link. */
function openTabs(...starts: readonly ("kept" | "link")[]) {
  const { openTab } = openWebSpace();
  return starts.map((start) => {
    const device = openClearableDevice(openTab(), BOOK_SCRIPT);
    let shown: string = start;
    const entry = openEntry(device, "strip", { text: () => shown, isKept: start === "kept" });
    entry.subscribe((text) => {
      shown = text;
    });
    /** Without a rest what was written is shown, but not kept yet. */
    const write = (text: string, before = shown) => {
      shown = text;
      return { rest: () => entry.keep(before) };
    };
    const make = (text: string, before?: string) => write(text, before).rest();
    const arrive = (text: string) => {
      shown = text;
      entry.leave();
    };
    return { make, write, arrive, shown: () => shown, kept: () => keptText(device, "strip") };
  });
}

const shownIn = (tabs: ReturnType<typeof openTabs>) => tabs.map(({ shown }) => shown());

describe("a kept thing in two tabs", () => {
  it("that both show is the same in both, whoever changes it", () => {
    const tabs = openTabs("kept", "kept");
    const [one, two] = tabs;
    for (const [tab, text] of [
      [one, "a"],
      [two, "a b"],
      [one, "a b c"],
    ] as const) {
      tab?.make(text);
      expect(shownIn(tabs)).toEqual([text, text]);
    }
    expect(two?.kept()).toBe("a b c");
  });

  it("is left alone by a tab that shows something else, and stays in sight when that is changed", () => {
    const tabs = openTabs("kept", "link");
    const [mine, visit] = tabs;
    mine?.make("mine");
    expect(shownIn(tabs)).toEqual(["mine", "link"]);
    visit?.make("theirs");
    expect(shownIn(tabs)).toEqual(["mine", "theirs"]);
    mine?.make("mine again");
    expect(shownIn(tabs)).toEqual(["mine again", "theirs"]);
    expect(visit?.kept()).toBe("mine again");
  });

  it("is gone on with by a tab that comes back to it", () => {
    const tabs = openTabs("kept", "link");
    const [mine, visit] = tabs;
    mine?.make("mine");
    visit?.make("mine");
    mine?.make("mine, and more");
    expect(shownIn(tabs)).toEqual(["mine, and more", "mine, and more"]);
  });

  it("of which one is begun anew three times over is followed by nobody who shows an older one", () => {
    const tabs = openTabs("kept", "link", "link");
    for (const [index, tab] of tabs.entries()) tab.make(`${index}`);
    tabs[1]?.make("1, and more");
    expect(shownIn(tabs)).toEqual(["0", "1, and more", "2"]);
  });

  it("takes away nothing that was just written and is not kept yet", () => {
    const tabs = openTabs("kept", "kept");
    const [one, two] = tabs;
    const typed = one?.write("typed");
    two?.make("theirs");
    expect(shownIn(tabs)).toEqual(["typed", "theirs"]);
    typed?.rest();
    expect(shownIn(tabs)).toEqual(["typed", "theirs"]);
    two?.make("theirs, and more");
    expect(shownIn(tabs)).toEqual(["typed", "theirs, and more"]);
  });

  it("is gone on with though more is written before what was followed has rested", () => {
    const tabs = openTabs("kept", "kept");
    const [one, two] = tabs;
    one?.make("a");
    two?.make("a b", "kept");
    expect(shownIn(tabs)).toEqual(["a b", "a b"]);
  });

  it("is not gone on with by what an address brought into a tab that showed it", () => {
    const tabs = openTabs("kept", "kept");
    const [one, two] = tabs;
    one?.make("mine");
    two?.arrive("from an address");
    two?.make("changed there");
    expect(shownIn(tabs)).toEqual(["mine", "changed there"]);
  });

  it("is kept though nobody changed it only where it came with a link and nothing is kept", () => {
    const [usual, visit, other] = openTabs("kept", "link", "link");
    usual?.make("kept");
    expect(usual?.kept()).toBeUndefined();
    visit?.make("link");
    expect(usual?.kept()).toBe("link");
    visit?.make("mine");
    other?.make("link");
    expect(usual?.kept()).toBe("mine");
  });
});
