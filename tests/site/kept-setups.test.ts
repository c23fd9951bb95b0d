/** Set-ups among what is kept: the one in use and those that are files, with what opens and sends them. */
import { describe, expect, it } from "vitest";
import { openDevice } from "../../site/script/device/device.ts";
import { keptViews } from "../../site/script/lazy/folder/kept-views.ts";
import { readSetupAddress } from "../../src/view/address/setup-address.ts";
import type { CatalogueData } from "../../src/view/catalogue.ts";
import { BOOK_SCRIPT, openWebSpace } from "../setup/web-space.ts";

const BOOK: CatalogueData = { notebooks: [], recipes: [], strips: [] };
const MARCH = "#v=1&dates=2027-03&from=43&pages=month-opener,own-week";
const FILE = "---\ntitle: April\ndates: 2027-04\nfirst: 60\npages: [own-week]\n---\n";

const setupsOf = (kept: Readonly<Record<string, string>>) => {
  const device = openDevice(openWebSpace().openTab(), BOOK_SCRIPT);
  for (const [name, text] of Object.entries(kept)) {
    if (name === "setup") device.set("setup", text);
    else device.set("setups/april.md", text);
  }
  const views = keptViews({ book: BOOK, texts: {}, device });
  return views.filter(({ kind }) => kind === "setups");
};

describe("kept set-ups", () => {
  it("are the one in use, called by its days, and the files", () => {
    const views = setupsOf({ setup: `3 ${MARCH}`, "setups/april.md": FILE });
    expect(views.map(({ title, entry, page }) => [title, entry, page])).toEqual([
      ["March 2027", "setup", "setup"],
      ["April", undefined, "setup"],
    ]);
    expect(views.map(({ file }) => file.path)).toEqual(["setups/march-2027.md", "setups/april.md"]);
    expect(views[0]?.file.text).toContain("\ndates: 2027-03\nfirst: 43\n");
  });

  it("are opened without a notebook, and sent with one", () => {
    const [view] = setupsOf({ "setups/april.md": FILE });
    const opened = readSetupAddress(view?.hash ?? "");
    const sent = readSetupAddress(view?.link ?? "");
    expect(opened.ok && [opened.value.notebook, opened.value.setup?.first]).toEqual([
      undefined,
      60,
    ]);
    expect(sent.ok && sent.value.notebook?.axes.across.dots).toBeGreaterThan(0);
  });

  it.each([
    ["without pages", `1 #v=1&dates=2027-03`],
    ["that is spoilt", "1 #v=1&dates=2027-13&pages=week"],
    ["that is a file already", `1 #v=1&dates=2027-04&from=60&pages=own-week&setup=April`],
  ])("leave out one in use %s", (_, text) => {
    const file = `---\ntitle: April\ndates: 2027-04\nfirst: 60\npages:\n  - own-week\nlanes: 4\nmake: edges\nwidth: 30\n---\n`;
    const views = setupsOf({ setup: text, "setups/april.md": file });
    expect(views.map(({ entry }) => entry)).toEqual([undefined]);
  });
});
