import { describe, expect, it } from "vitest";
import { allElements, parseXml } from "./parse-xml.ts";

describe("the tests' own XML reader", () => {
  it("reads elements, attributes, text and entities", () => {
    const root = parseXml('<g a="1 &lt; 2"><p/>\n<t x="&quot;">&amp; so on</t></g>\n');
    expect(root.attributes.get("a")).toBe("1 < 2");
    expect(allElements(root).map(({ name }) => name)).toEqual(["g", "p", "t"]);
    expect(root.children[1]?.text).toBe("& so on");
  });

  it.each([
    ["an open element", "<g><p></g>"],
    ["text after the root", "<g/>more"],
    ["an unknown entity", "<g>&nbsp;</g>"],
    ["a bare ampersand", "<g>salt & pepper</g>"],
    ["an attribute twice", '<g a="1" a="2"/>'],
    ["an attribute without quotes", "<g a=1/>"],
    ["an angle in an attribute", '<g a="<"/>'],
    ["a control character", "<g>\u0001</g>"],
    ["a lone surrogate", "<g>\ud800</g>"],
    ["a noncharacter", "<g>\ufffe</g>"],
  ])("refuses %s", (_, source) => {
    expect(() => parseXml(source)).toThrow();
  });
});
