/** Every kind of page is HTML as the standard has it, by html-validate. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { HtmlValidate, StaticConfigLoader } from "html-validate";
import { describe, expect, inject, it } from "vitest";
import { PAGE_KINDS } from "../browser/page-kinds.ts";

const book = inject("book");

const validator = new HtmlValidate(
  new StaticConfigLoader({
    root: true,
    extends: ["html-validate:standard", "html-validate:a11y", "html-validate:document"],
    rules: {
      // Files of the book's own folder, which may be opened from disk, where no such promise can be kept.
      "require-sri": "off",
      // These forms act on every key press; there is nothing to be sent.
      "wcag/h32": "off",
      // A table that is laid out in blocks on a phone loses its role in some browsers and is given it back.
      "no-redundant-role": "off",
      // A box that scrolls is a region of its own inside its section, by the same name.
      "prefer-native-element": "off",
      "unique-landmark": "off",
      // Allowed by the standard, as the rule itself says: a list named by its headings.
      "aria-label-misuse": "off",
      // Some browsers restore what was ticked before a page was reloaded, and know no other word against it.
      "valid-autocomplete": "off",
    },
  }),
);

/** `line:column rule: message`, one for each fault. */
function faultsIn(html: string): readonly string[] {
  const { results } = validator.validateStringSync(html);
  return results.flatMap(({ messages }) =>
    messages.map(({ line, column, ruleId, message }) => `${line}:${column} ${ruleId}: ${message}`),
  );
}

describe("the HTML of", () => {
  it.each(Object.entries(PAGE_KINDS))("%s is valid", (_, path) => {
    expect(faultsIn(readFileSync(join(book, path), "utf8"))).toEqual([]);
  });
});

describe("a planted fault", () => {
  const page = (body: string) =>
    `<!DOCTYPE html>\n<html lang="en"><head><title>T</title></head><body><main><h1>T</h1>${body}</main></body></html>`;

  it("is found", () => {
    expect(faultsIn(page("<p>Well.</p>"))).toEqual([]);
    expect(faultsIn(page("<p><div>Not well.</div></p>"))).not.toEqual([]);
    expect(faultsIn(page('<p id="a"></p><p id="a"></p>'))).not.toEqual([]);
    expect(faultsIn(page('<img src="a.png">'))).not.toEqual([]);
  });
});
