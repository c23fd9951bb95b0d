import { describe, expect, it } from "vitest";
import { guideFence } from "../../../src/view/guide/guide-fence.ts";

describe("the words of a fence", () => {
  const example = { slug: "", on: [], isWrong: false, text: "x" };
  it.each([
    ["yaml pattern seed-list on square", { kind: "pattern", slug: "seed-list", on: ["square"] }],
    ["yaml pattern seed-list on square, a6", { slug: "seed-list", on: ["square", "a6"] }],
    ["yaml pattern on-the-lane on a5", { slug: "on-the-lane", on: ["a5"] }],
    [
      "yaml pattern month on a5 for 2027-05, 2028-02",
      { slug: "month", on: ["a5"], spans: ["2027-05", "2028-02"] },
    ],
    [
      "yaml pattern month on a5 for 2027-W09 in US",
      { slug: "month", on: ["a5"], spans: ["2027-W09"], region: "US" },
    ],
    ["yaml pattern seed-list wrong", { kind: "pattern", slug: "seed-list", isWrong: true }],
    ["yaml split on a5", { kind: "split", on: ["a5"] }],
    ["yaml notebook a5", { kind: "notebook", slug: "a5" }],
    ["yaml notebook a5 wrong", { kind: "notebook", slug: "a5", isWrong: true }],
    ["yaml strip everyday on a5", { kind: "strip", slug: "everyday", on: ["a5"] }],
    ["yaml book", { kind: "book" }],
    ["yaml words", { kind: "words" }],
    ["yaml book wrong", { kind: "book", isWrong: true }],
  ])("`%s` asks for an example", (info, asked) => {
    expect(guideFence(info, "x")).toEqual({ ...example, kind: "pattern", ...asked });
  });

  it("`figure fencepost` asks for a drawing by name, with its text as the caption", () => {
    expect(guideFence("figure fencepost", "Posts.\n")).toEqual({
      kind: "figure",
      name: "fencepost",
      text: "Posts.\n",
    });
  });

  it.each(["", "sh", "text"])("`%s` asks for nothing", (info) => {
    expect(guideFence(info, "x")).toEqual({ kind: "plain" });
  });

  it.each(["yaml", "yaml recipe", "yaml pattern Seeds", "yaml patterns a on b"])(
    "`%s` is refused, for nobody would build it",
    (info) => {
      expect(() => guideFence(info, "x")).toThrow(`does not know how to show ${info}`);
    },
  );
});
