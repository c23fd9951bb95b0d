/** Data that is written into a script is the same data again, shared parts and all. */
import { runInNewContext } from "node:vm";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { scriptValue } from "../../src/build/pages/script-value.ts";

const again = (data: unknown) => structuredClone(runInNewContext(`(${scriptValue(data)})`));

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
    const [one, two, three] = again([area, { area, deep: area.inner }, structuredClone(area)]);
    expect(two.area).toBe(one);
    expect(two.deep).toBe(one.inner);
    expect(three).toEqual(one);
    expect(three).not.toBe(one);
  });

  it("has no word of what was written that could end the script", () => {
    expect(scriptValue({ title: "\u2028</script><!--" })).toBe('{"title":"\u2028</script><!--"}');
  });
});
