/** An example that does not keep its word ends the build. */
import { describe, expect, it } from "vitest";
import { showExample } from "../../../src/view/guide/guide-example.ts";
import { type ExampleFence, guideFence } from "../../../src/view/guide/guide-fence.ts";

const GOOD = "---\ntitle: Halves\npurpose: page\npage: {columns: 2}\n---\n";
const BAD = "---\ntitle: Halves\npurpose: pages\npage: {columns: 2}\n---\n";

function shown(info: string, text: string) {
  const fence = guideFence(info, text);
  if (fence.kind === "figure" || fence.kind === "plain") throw new Error("no example");
  const example: ExampleFence = fence;
  return showExample(example, { id: "shown", patterns: new Map() });
}

describe("an example", () => {
  it("that should be well and is not is told with its report", () => {
    expect(() => shown("yaml pattern halves on square", BAD)).toThrow("`purpose` takes");
  });

  it("that should be refused and is not is told by its file", () => {
    expect(() => shown("yaml pattern halves wrong", GOOD)).toThrow(
      "the guide's patterns/halves.md should be refused and is not",
    );
  });

  it("on a notebook that the guide does not have is told", () => {
    expect(() => shown("yaml pattern halves on a3", GOOD)).toThrow("has no notebook a3");
  });

  it.each([
    ["2027-13", "dates: month\n"],
    ["2027-05", ""],
  ])("for days that are none of its pattern's is told: %s", (span, dates) => {
    const text = GOOD.replace("page:", `${dates}page:`);
    expect(() => shown(`yaml pattern halves on square for ${span}`, text)).toThrow("no days");
  });

  it("of a split that does not fit its notebook is told", () => {
    expect(() => shown("yaml split on square", "columns: 40\n")).toThrow("does not fit square");
  });

  it("of a strip whose patterns were not shown before is told", () => {
    const strip = "---\ntitle: Strip\nacross: [halves]\n---\n";
    expect(() => shown("yaml strip everyday on square", strip)).toThrow("halves");
  });

  it("that does not fit shows why, and what would", () => {
    const text = GOOD.replace("columns: 2", "columns: 40");
    expect(shown("yaml pattern halves on square", text)).toEqual([
      {
        kind: "misfit",
        reason: "The columns need 40 steps and have 24: 16 too few.",
        near: ["Have 24 columns instead of 40."],
        nearHead: "This would make it fit:",
      },
    ]);
  });
});
