/** The words for problems that no wrong file shows, and what all words have in common. */
import { describe, expect, it } from "vitest";
import type { Issue } from "../../src/issue/facts/issue.ts";
import { sayIssue } from "../../src/issue/words/say-issue.ts";

const at = { file: "patterns/a.md", line: 9, column: 3, width: 2 };

describe("a problem in words", () => {
  it.each<[Issue, string, string | undefined]>([
    [
      { about: "rule", kind: "too-many-areas", limit: 2_000, at },
      "The pattern has more than 2000 written areas.",
      "Use `count`, `each` and `repeat` for areas that are alike.",
    ],
    [
      { about: "file", kind: "unreadable", at },
      "The file cannot be read.",
      "It must be a plain file that you are allowed to read.",
    ],
    [
      { about: "file", kind: "bad-name", name: "表.md", at },
      "`表.md` is not a name that a page can have.",
      "Names end in .md and have small letters a–z, digits and hyphens, not a hyphen first.",
    ],
    [
      { about: "yaml", kind: "too-deep", limit: 64, at },
      "This is nested more than 64 levels deep.",
      "Look for brackets or dashes that are repeated by mistake.",
    ],
    [
      { about: "yaml", kind: "too-many-words", limit: 20_000, at },
      "The file has more than 20,000 words and marks: what comes from here on is too much.",
      "Look for something that is repeated by mistake, or divide it into several files.",
    ],
    [
      { about: "yaml", kind: "long-key", at },
      "A key must stand on one line, with its colon.",
      "Look for a missing colon, bracket or quotation mark before this.",
    ],
    [
      { about: "rule", kind: "too-many-labels", labels: 2, tracks: 1, at },
      "There are 2 labels for 1 track.",
      "There may be fewer labels than tracks, not more. This is the first one too many.",
    ],
    [
      {
        about: "rule",
        kind: "dots-beyond-paper",
        axis: "down",
        dots: 3,
        pitchMm: 50,
        needsMm: 100,
        hasMm: 52.25,
        isCentred: false,
        fitting: 1,
        at,
      },
      "The dots down need 100 mm and the paper has 52.25 mm below the first.",
      "Make the pitch smaller or the paper larger.",
    ],
    [
      { about: "book", kind: "unknown-slug", what: "pattern", slug: "a", known: [], at },
      "There is no pattern `a`.",
      "The folder `patterns` is empty.",
    ],
    [
      {
        about: "book",
        kind: "unknown-slug",
        what: "notebook",
        slug: "z",
        known: Array.from({ length: 14 }, (_, index) => `n${index}`),
        at,
      },
      "There is no notebook `z`.",
      "There are `n0`, `n1`, `n2`, `n3`, `n4`, `n5`, `n6`, `n7`, `n8`, `n9`, `n10`, `n11` and 2 others.",
    ],
  ])("%j", (issue, sentence, hint) => {
    expect(sayIssue(issue)).toEqual({ sentence, hint });
  });

  it("quotes a long text only in part", () => {
    const found = { kind: "scalar", source: "seed ".repeat(100), isText: true } as const;
    const expected = { kind: "choice", allowed: ["day"] } as const;
    const said = sayIssue({
      about: "shape",
      kind: "unsuitable",
      key: "purpose",
      found,
      expected,
      at,
    });
    expect(said.sentence).toBe(
      "`purpose` cannot be `seed seed seed seed seed seed seed seed seed see…`.",
    );
  });
});
