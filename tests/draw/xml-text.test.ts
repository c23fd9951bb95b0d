import { describe, expect, it } from "vitest";
import { xmlId, xmlText } from "../../src/draw/svg/xml-text.ts";

describe("text for XML", () => {
  it.each([
    ["is as it was", "Beans & peas <3", "Beans & peas <3"],
    ["loses control characters", "be\u0000an\u0008s\u001b", "beans"],
    ["loses noncharacters", "pe\ufffea\uffff", "pea"],
    ["has one space for white space of any kind", "a\u00a0b\t\r\nc\u2003d", "a b c d"],
    ["keeps a whole pair", "🌱", "🌱"],
    ["has U+FFFD for half a pair", "x\ud83c", "x\ufffd"],
    ["has U+FFFD for the other half", "\udf31x", "\ufffdx"],
    ["loses marks that turn the direction of what follows", "a\u202eb\u2066c\u2069", "abc"],
    ["keeps letters that run to the left", "שלום", "שלום"],
  ])("%s", (_, text, expected) => {
    expect(xmlText(text)).toBe(expected);
  });

  it.each([
    ["page-week-a5", "page-week-a5"],
    ["26 by 38", "d-26-by-38"],
    ['"><script>', "d--script-"],
    ["", "d-"],
  ])("the id of %j is %s", (name, id) => {
    expect(xmlId(name)).toBe(id);
  });
});
