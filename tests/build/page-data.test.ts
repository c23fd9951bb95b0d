/** Data that a page gets as a script is the same data again, shared parts and all. */
import { runInNewContext } from "node:vm";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pageScript } from "../../src/build/pages/page-data.ts";

function again(data: unknown) {
  const window: { data?: unknown } = {};
  runInNewContext(pageScript("data", data), { window });
  return structuredClone(window.data);
}

describe("data in a script", () => {
  it("is equal, whatever it is", () => {
    const options = {
      withNullPrototype: false,
      key: fc.string().filter((key) => key !== "__proto__"),
    };
    fc.assert(
      fc.property(fc.object(options), (object) => {
        const plain = JSON.parse(JSON.stringify(object));
        expect(again(plain)).toEqual(plain);
      }),
      { seed: 60_100, numRuns: 300 },
    );
  });

  it("keeps an endless number", () => {
    expect(again({ max: Number.POSITIVE_INFINITY })).toEqual({ max: Number.POSITIVE_INFINITY });
  });

  it("shares the parts that were shared, and no others", () => {
    const area = { label: "Mon", inner: { a: [1] } };
    const data = again([area, { area, deep: area.inner }, structuredClone(area)]);
    expect(data).toEqual([area, { area, deep: area.inner }, area]);
    if (!Array.isArray(data)) throw new TypeError("no list");
    const [one, two, three] = data;
    expect(two.area).toBe(one);
    expect(two.deep).toBe(one.inner);
    expect(three).not.toBe(one);
  });

  it("has no word of what was written that could end the script", () => {
    const script = pageScript("data", { title: "\u2028</script><!--" });
    expect(script).not.toMatch(/\u2028|<\/|<!/);
  });
});
