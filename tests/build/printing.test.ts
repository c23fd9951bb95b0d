/** How a build makes its PDF files: afresh or from before, and with a printer's error. */
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { openAskPdf } from "../../src/build/artifacts/pdf/ask-pdf.ts";
import { openPdfCache } from "../../src/build/artifacts/pdf/pdf-cache.ts";
import { type Content, loadContent } from "../../src/build/content/load-content.ts";
import { readText } from "../print/poppler.ts";
import { askProgram } from "../setup/ask-program.ts";
import { TINY } from "../setup/tiny-content.ts";
import { bytesIn } from "./files-in.ts";
import { scratchFolder, writeContent } from "./write-content.ts";

const HALVES =
  "---\ntitle: Halves\npurpose: page\npage: {columns: {count: 2, gap: 1}}\n---\nTwo.\n";
const BOOK = "title: Tiny\nnotebooks: [plain, small]\n";

const STRIPPED = {
  ...TINY,
  "book.yaml": BOOK,
  "patterns/halves.md": HALVES,
  "strips/daily.md": "---\ntitle: Daily\nacross: [halves, wide]\ndown: [halves]\n---\nBoth.\n",
};

interface Built {
  readonly files: ReadonlyMap<string, string>;
  readonly output: string;
  /** What the build said. */
  readonly said: string;
}

/** Builds with a folder of finished artifacts of its own. */
async function build(content: string, cache = join(scratchFolder(), "cache")): Promise<Built> {
  const output = join(scratchFolder(), "book");
  const words = ["build", `--content=${content}`, `--output=${output}`];
  const { code, stdout, stderr } = await askProgram(words, { cache });
  expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
  return { files: bytesIn(output), output, said: stdout };
}

/** The book that others are compared with, built from nothing once; what it made stays in a cache. */
const KEPT = mkdtempSync(join(tmpdir(), "spanbook-printing-"));
afterAll(() => rmSync(KEPT, { recursive: true, force: true }));
let kept: Promise<Built> | undefined;
function plainBook(): Promise<Built> {
  kept ??= build(writeContent(STRIPPED), KEPT);
  return kept;
}

/** All that the plain book made, in a folder of one's own. */
function cacheOfPlainBook(): string {
  const cache = join(scratchFolder(), "cache");
  cpSync(KEPT, cache, { recursive: true });
  return cache;
}

const pdfsIn = (files: ReadonlyMap<string, string>) =>
  new Map([...files].filter(([path]) => path.endsWith(".pdf")));

async function contentIn(folder: string): Promise<Content> {
  const reading = await loadContent(folder);
  if (!reading.ok) throw new Error("the content has a problem");
  return reading.value;
}

describe("a build", () => {
  // That what is ready changes no byte is said of a whole book, where several builds are compared.
  it("prints each pattern, strip and book, on each notebook", async () => {
    const { files, said } = await plainBook();
    expect(pdfsIn(files).size).toBe(2 * (2 + 3 + 1));
    expect(said).toContain("; 0 of 12 PDF files were ready from before.");
  });

  it("makes again what a changed file is on, and nothing else", async () => {
    const before = await plainBook();
    const halves = HALVES.replace("count: 2", "count: 3");
    const after = await build(
      writeContent({ ...STRIPPED, "patterns/halves.md": halves }),
      cacheOfPlainBook(),
    );
    const changed = [...pdfsIn(after.files)]
      .filter(([path, bytes]) => before.files.get(path) !== bytes)
      .map(([path]) => path);
    expect(changed.toSorted()).toEqual([
      "notebooks/plain/book.pdf",
      "notebooks/small/book.pdf",
      "patterns/halves/plain/page.pdf",
      "patterns/halves/small/page.pdf",
      "strips/daily/plain/card.pdf",
      "strips/daily/plain/strip-letter.pdf",
      "strips/daily/plain/strip.pdf",
      "strips/daily/small/card.pdf",
      "strips/daily/small/strip-letter.pdf",
      "strips/daily/small/strip.pdf",
    ]);
    expect(after.said).toContain("; 2 of 12 PDF files were ready from before.");
  });

  it("stretches all that is printed by the printer's error, in files and on pages", async () => {
    const printer = `${BOOK}printer: {x: 1.01, y: 0.99}\n`;
    const plain = await plainBook();
    const content = writeContent({ ...STRIPPED, "book.yaml": printer });
    const stretched = await build(content, cacheOfPlainBook());
    const same = [...pdfsIn(stretched.files)].filter(
      ([path, bytes]) => plain.files.get(path) === bytes,
    );
    expect(same).toEqual([]);
    const sheet = readFileSync(join(stretched.output, "strips/daily/plain/strip.pdf"));
    const said = readText(new Uint8Array(sheet)).replace(/\s+/g, " ");
    expect(said).toContain("stretched by x 1.01 and y 0.99");
    const page = stretched.files.get("strips/daily/plain/index.html") ?? "";
    // A4 on its side: its long side is the printer's y (297 · 0.99), its short side x (210 · 1.01).
    expect(page).toContain('width="294.03mm" height="212.1mm" preserveAspectRatio="none"');
  });

  it("carries on a strip what the book does not list, without a link to it", async () => {
    const book = `${BOOK}patterns: [halves]\n`;
    const { files } = await build(
      writeContent({ ...STRIPPED, "book.yaml": book }),
      cacheOfPlainBook(),
    );
    const page = files.get("strips/daily/plain/index.html") ?? "";
    expect(page).toContain("Wide");
    expect(page).not.toContain("patterns/wide");
    expect([...files.keys()].filter((path) => path.startsWith("patterns/wide"))).toEqual([]);
    const fit = files.get("fit/book.js") ?? "";
    expect(fit).toContain('unlisted:[{slug:"wide"');
  });
});

describe("a file that is asked for", () => {
  it("has the bytes of the build, is made once, and is none where the book has none", async () => {
    const { files } = await plainBook();
    const content = await contentIn(writeContent(STRIPPED));
    const pdfs = join(scratchFolder(), "pdfs");
    const cache = openPdfCache(pdfs);
    const ask = openAskPdf(content, cache, "1");
    for (const path of pdfsIn(files).keys()) {
      const bytes = await ask(path);
      expect(Buffer.from(bytes ?? []).toString("latin1")).toBe(files.get(path));
    }
    expect(ask("patterns/halves/gone/page.pdf")).toBeUndefined();
    expect(ask("index.html")).toBeUndefined();
    expect(existsSync(pdfs)).toBe(true);
  });

  it("may be asked for at once with others: each is as if it were alone", async () => {
    const content = await contentIn(writeContent(STRIPPED));
    const asked = ["patterns/halves/plain/page.pdf", "notebooks/plain/book.pdf"] as const;
    const together = openAskPdf(content, openPdfCache(join(scratchFolder(), "a")), "1");
    const atOnce = await Promise.all(asked.map((path) => together(path)));
    const alone = openAskPdf(content, openPdfCache(join(scratchFolder(), "b")), "1");
    for (const [index, path] of asked.toReversed().entries())
      expect(await alone(path)).toEqual(atOnce[asked.length - 1 - index]);
  });
});
