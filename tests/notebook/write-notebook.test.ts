/** A written notebook reads back as the same notebook. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readNotebook } from "../../src/notebook/read-notebook.ts";
import { writeNotebook } from "../../src/notebook/write-notebook.ts";
import { anyNotebook } from "../random/any-notebook.ts";
import { demoNames, demoText } from "../setup/demo-files.ts";

function roundTrip(slug: string, text: string) {
  return readNotebook({ path: `notebooks/${slug}.md`, text });
}

describe("a notebook that is written and read", () => {
  it.each(demoNames("notebooks"))("is the same: %s", (name) => {
    const slug = name.replace(".md", "");
    const first = roundTrip(slug, demoText(`notebooks/${name}`));
    if (!first.ok) throw new Error(`${name} is not all right`);
    expect(roundTrip(slug, writeNotebook(first.value))).toEqual(first);
  });

  it("is the same, whatever it is", () => {
    fc.assert(
      fc.property(anyNotebook(), (notebook) => {
        expect(roundTrip(notebook.slug, writeNotebook(notebook))).toEqual({
          ok: true,
          value: notebook,
        });
      }),
      { seed: 20_032, numRuns: 1_000 },
    );
  });

  it("leaves out a first dot that is centred, and writes both axes as one where they agree", () => {
    const read = roundTrip(
      "a5",
      "---\ntitle: A5\npaper: A5\npitch: 5\ndots: [26, 38]\n---\nOdile's.",
    );
    if (!read.ok) throw new Error("the notebook is not all right");
    expect(writeNotebook(read.value)).toBe(
      [
        "---",
        "title: A5",
        "paper: A5",
        "pitch: 5",
        "dots: [26, 38]",
        "count: edge-to-dot",
        "ruling: dots",
        "binding: left",
        "middle: lower",
        "---",
        "",
        "Odile's.",
        "",
      ].join("\n"),
    );
  });
});
