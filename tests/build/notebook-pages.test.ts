/** The page of every notebook as it was built: what comes out even, which patterns fit, and the file to take away. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, it } from "vitest";
import { readNotebook } from "../../src/notebook/read-notebook.ts";
import { evenRows } from "../../src/view/notebook/division-rows.ts";
import { paperScale } from "../../src/view/notebook/notebook-facts.ts";
import { bookContent } from "../setup/demo-content.ts";

const book = inject("book");
const textOf = (path: string) => readFileSync(join(book, path), "utf8");
const content = await bookContent(inject("content"));
const { notebooks, recipes, texts } = content;

describe("what divides evenly", () => {
  /** Every way to lay at least two parts of at least two steps with a gap, found by trying all. */
  it("is every count and part that fill the length, for each gap", () => {
    for (let steps = 1; steps <= 90; steps++) {
      const tried = [0, 1, 2, 3].map((gap) => {
        const sums: string[] = [];
        for (let count = 2; count <= steps; count++)
          for (let part = 2; part <= steps; part++)
            if (count * part + (count - 1) * gap === steps) sums.push(`${count} × ${part}`);
        return sums;
      });
      expect(evenRows(steps).map(({ sums }) => sums)).toEqual(tried);
    }
  });

  /** Common practice in the trade (no source): 26 has its centre at 13, and thirds with a gap of 1 are 8, 8, 8. */
  it("has, of 26 steps, the halves of 13, and with a gap of 1 the thirds of 8", () => {
    const [without, one] = evenRows(26);
    expect(without).toEqual({ gap: "no gap", sums: ["2 × 13", "13 × 2"] });
    expect(one).toEqual({ gap: "a gap of 1", sums: ["3 × 8", "9 × 2"] });
  });
});

describe("the list of notebooks", () => {
  const entry = (width: number) => ({
    slug: "",
    title: "",
    steps: "",
    paper: "",
    width,
    height: 1,
  });

  it.each([
    [[], 0.8],
    [[105, 148], 0.8],
    [[148, 210], 150 / 210],
    [[148, 297, 210], 150 / 297],
  ])("%j mm wide are drawn at %d pixels a millimetre, the widest within 150", (widths, scale) => {
    expect(paperScale(widths.map(entry))).toBe(scale);
  });
});

describe.each(notebooks.map(({ slug }) => slug))("the page of %s", (slug) => {
  const html = textOf(`notebooks/${slug}/index.html`);
  const listed = html.split(/<h3 id="(even|over|misfit)">/).slice(1);
  const groups = listed.flatMap((state, index) =>
    index % 2 === 0
      ? [
          ...((listed[index + 1] ?? "").split("</ul>")[0]?.matchAll(/patterns\/([^/]+)\//g) ?? []),
        ].map(([, pattern]) => [pattern, state])
      : [],
  );

  it("lists every pattern once, by how its own page says that it comes out", () => {
    const said = recipes.map(({ slug: pattern }) => {
      const page = textOf(`patterns/${pattern}/${slug}/index.html`);
      const lede = /<p class="lede">([\s\S]*?)<\/p>/.exec(page)?.[1] ?? "";
      if (lede.includes("does not fit")) return [pattern, "misfit"];
      return [pattern, lede.includes("Nothing left over") ? "even" : "over"];
    });
    expect([...new Set(groups.map(([pattern]) => pattern))].sort()).toEqual(
      recipes.map((recipe) => recipe.slug).sort(),
    );
    const once = new Map(groups.map(([pattern, state]) => [pattern, state]));
    expect(said.filter(([pattern, state]) => once.get(pattern) !== state)).toEqual([]);
  });

  it("counts them as the list does, and leads to the same in the gallery", () => {
    const lede = /<p class="lede">([\s\S]*?)<\/p>/.exec(html)?.[1] ?? "";
    const numbers = [...lede.matchAll(/&amp;fit=(\w+)">(\d+)/g)].map(([, fit, count]) => [
      fit,
      Number(count),
    ]);
    const states = new Map(groups.map(([pattern, state]) => [pattern, state]));
    const even = [...states.values()].filter((state) => state === "even").length;
    const misfit = [...states.values()].filter((state) => state === "misfit").length;
    expect(numbers).toEqual([
      ["fits", recipes.length - misfit],
      ["even", even],
    ]);
    expect(lede).toContain(`patterns/index.html#on=${slug}&amp;fit=even`);
  });

  it("shows four ways of counting and four gaps, across and down, each with its words", () => {
    expect(html.match(/class="way[ "]/g)).toHaveLength(8);
    expect(html.match(/this notebook<\/small>/g)).toHaveLength(2);
    expect(html.match(/<li><figure class="plate"><figcaption>/g)).toHaveLength(8);
  });

  it("hands out the notebook's file as it was written, and the book reads it", () => {
    const path = `notebooks/${slug}.md`;
    const text = textOf(`notebooks/${slug}/${slug}.md`);
    expect(text).toBe(texts.get(path));
    expect(readNotebook({ path, text })).toMatchObject({ ok: true, value: { slug } });
    expect(html).toContain(`href="${slug}.md" download`);
  });
});
