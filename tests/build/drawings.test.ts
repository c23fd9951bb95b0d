/** Every drawing of the demo book, in its own file and on its page: well-formed, and with a name for those who cannot see it. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, it } from "vitest";
import { filesIn } from "../../src/build/output/files-in.ts";
import { allElements, parseXml } from "../draw/parse-xml.ts";
import { pagesIn } from "./files-in.ts";

const book = inject("book");

/** What is wrong with a drawing; "" where nothing is. */
function faultOf(svg: string): string {
  try {
    const root = parseXml(svg);
    const [title, description] = root.children;
    if (root.name !== "svg") return "no svg";
    if (title?.name !== "title" || title.text.trim() === "") return "no title";
    if (description?.name !== "desc" || description.text.trim() === "") return "no description";
    const ids = [title, description].map(({ attributes }) => attributes.get("id") ?? "");
    if (root.attributes.get("aria-labelledby") !== ids.join(" ")) return "not labelled by them";
    const names = new Set(allElements(root).map(({ name }) => name));
    const odd = [...names].filter(
      (name) => !["svg", "title", "desc", "g", "path", "text"].includes(name),
    );
    return odd.join(", ");
  } catch (error) {
    return String(error);
  }
}

describe("the drawings", () => {
  const files = filesIn(book).filter((path) => path.endsWith(".svg") && path !== "assets/icon.svg");

  it("in files are well-formed and named", () => {
    const faults = files.flatMap((path) => {
      const fault = faultOf(readFileSync(join(book, path), "utf8"));
      return fault === "" ? [] : [`${path}: ${fault}`];
    });
    expect(files.length).toBeGreaterThan(700);
    expect(faults).toEqual([]);
  });

  it("on pages are well-formed and named, and no two of a page share an id", () => {
    let count = 0;
    const faults = [...pagesIn(book)].flatMap(([path, html]) => {
      const drawings = [
        ...html.matchAll(/<svg class="drawing"(?![^>]*aria-hidden)[\s\S]*?<\/svg>/g),
      ].map(([svg]) => svg);
      count += drawings.length;
      const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
      const twice = ids.filter((id, index) => ids.indexOf(id) !== index);
      const found = drawings.map(faultOf).filter((fault) => fault !== "");
      return [...found, ...twice.map((id) => `${id} twice`)].map((fault) => `${path}: ${fault}`);
    });
    expect(count).toBeGreaterThan(300);
    expect(faults).toEqual([]);
  });
});
