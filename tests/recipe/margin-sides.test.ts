import { describe, expect, it } from "vitest";
import type { PageSide } from "../../src/measure/paper-side.ts";
import type { Binding } from "../../src/notebook/notebook.ts";
import { marginSides, sideOfKey } from "../../src/recipe/margin-sides.ts";
import type { MarginKey } from "../../src/recipe/recipe.ts";

const INNER: readonly (readonly [Binding, PageSide, string, string])[] = [
  ["left", "single", "left", "right"],
  ["left", "right", "left", "right"],
  ["left", "left", "right", "left"],
  ["right", "single", "right", "left"],
  ["right", "right", "left", "right"],
  ["right", "left", "right", "left"],
  ["top", "single", "top", "bottom"],
  ["top", "left", "top", "bottom"],
  ["top", "right", "top", "bottom"],
  ["none", "single", "left", "right"],
  ["none", "left", "right", "left"],
  ["none", "right", "left", "right"],
];

describe("a margin key lands on a side", () => {
  it.each(INNER)(
    "bound at %s, %s page: inner is %s and outer is %s",
    (binding, page, inner, outer) => {
      expect(sideOfKey("inner", binding, page)).toBe(inner);
      expect(sideOfKey("outer", binding, page)).toBe(outer);
    },
  );

  it.each(["top", "bottom", "left", "right"] as const)("%s is always itself", (key) => {
    for (const [binding, page] of INNER) expect(sideOfKey(key, binding, page)).toBe(key);
  });
});

const CLASHES: readonly (readonly [readonly MarginKey[], Binding, PageSide, string])[] = [
  [["inner", "left"], "left", "single", "left: left, inner"],
  [["inner", "left"], "none", "single", "left: left, inner"],
  [["outer", "left"], "left", "left", "left: left, outer"],
  [["outer", "left"], "right", "single", "left: left, outer"],
  [["inner", "top"], "top", "right", "top: top, inner"],
  [["outer", "bottom"], "top", "single", "bottom: bottom, outer"],
  [["inner", "outer", "left", "right"], "left", "single", "right: right, outer; left: left, inner"],
];

describe("two margin keys on one side", () => {
  it.each(CLASHES)("%j bound at %s, %s page: %s", (keys, binding, page, expected) => {
    const steps = Object.fromEntries(keys.map((key) => [key, 1]));
    const result = marginSides({ steps }, binding, page);
    expect(result.kind).toBe("conflict");
    if (result.kind !== "conflict") return;
    const said = result.clashes.map(({ side, keys }) => `${side}: ${keys.join(", ")}`).join("; ");
    expect(said).toBe(expected);
  });
});

describe("margins in steps", () => {
  it("gives 0 to a side that no key names", () => {
    expect(marginSides({ steps: { top: 2, inner: 3 } }, "left", "left")).toEqual({
      kind: "sides",
      top: 2,
      right: 3,
      bottom: 0,
      left: 0,
    });
  });

  it("takes a key at 0 steps as written", () => {
    expect(marginSides({ steps: { left: 0, inner: 1 } }, "left", "single").kind).toBe("conflict");
  });
});
