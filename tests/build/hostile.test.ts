/** Content from strangers: whatever it holds is shown as text. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { askProgram } from "../setup/ask-program.ts";
import { TINY } from "../setup/tiny-content.ts";
import { bytesIn, pagesIn } from "./files-in.ts";
import { scratchFolder, writeContent } from "./write-content.ts";

const MARKUP = `<img src=x onerror=alert(1)>"'&</title><script>alert(2)</script>{{ 7 * 7777 }}{% raw %}`;
const quoted = JSON.stringify(MARKUP);

const HOSTILE = {
  ...TINY,
  "book.yaml": `title: ${quoted}\nnotebooks: [plain, small]\n`,
  "notebooks/plain.md": `---\ntitle: ${quoted}\npaper: A5\npitch: 5\ndots: [26, 38]\n---\n${MARKUP}\n`,
  "patterns/halves.md": `---\ntitle: ${quoted}\npurpose: page\ntags: [${quoted}]\npage: {rows: {tracks: [{label: ${quoted}}, {label: ${quoted}, columns: 40}, {steps: 3}]}}\notherwise: [{page: {columns: {count: 2, labels: [${quoted}, ${quoted}]}}}]\n---\n${MARKUP}\n\n[a](javascript:alert(3)) ![b](https://example.org/c.png) <b>bold</b>\n\n\`\`\`html\n${MARKUP}\n\`\`\`\n`,
};

/** One build serves all checks. */
async function hostileBook(): Promise<string> {
  const output = join(scratchFolder(), "book");
  const content = writeContent(HOSTILE);
  const { code, stderr } = await askProgram([
    "build",
    `--content=${content}`,
    `--output=${output}`,
  ]);
  expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
  return output;
}

describe("markup in titles, labels, tags and text", () => {
  it("is text on every page and in every drawing, and loads nothing", async () => {
    const book = await hostileBook();
    const pages = pagesIn(book);
    const live = [...pages].filter(([, html]) =>
      /<img src=x|<script>|<b>bold|href="javascript:|src="https?:|54439/.test(html),
    );
    expect(live.map(([path]) => path)).toEqual([]);
    const drawings = [...bytesIn(book)].filter(([path]) => path.endsWith(".svg"));
    expect(drawings.length).toBeGreaterThan(10);
    expect(drawings.filter(([, svg]) => /<img|<script/.test(svg)).map(([path]) => path)).toEqual(
      [],
    );
    const home = readFileSync(join(book, "index.html"), "utf8");
    expect(home).toContain("&lt;img src=x onerror=alert(1)&gt;");
    expect(home).toContain("{{ 7 * 7777 }}{% raw %}");
  });
});
