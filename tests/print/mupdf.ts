/** What mupdf, a third reader of PDF, finds in a file: its pages, its text, its objects, and how it draws. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { needDebian } from "../setup/need-debian.ts";
import { type GreyPicture, greyPicture } from "./grey-picture.ts";

const MM_PER_POINT = 25.4 / 72;

/** Runs `mutool` on a file, which stands in its words as FILE; installs it where it is missing. */
function run(words: readonly string[], pdf: Uint8Array): Buffer {
  const folder = mkdtempSync(join(tmpdir(), "spanbook-mupdf-"));
  const file = join(folder, "read.pdf");
  writeFileSync(file, pdf);
  const all = words.map((word) => (word === "FILE" ? file : word));
  const ask = () => spawnSync("mutool", all, { maxBuffer: 1 << 28 });
  try {
    let answer = ask();
    if (answer.error !== undefined) {
      needDebian(["mupdf-tools"]);
      answer = ask();
    }
    // It tells which page it is at on the error stream, and warns with a word of its own; Debian builds it without colour profiles.
    const said = String(answer.stderr).replace(/^warning: ICC support is not available\n/m, "");
    if (answer.status !== 0 || /^(warning|error):/m.test(said)) throw new Error(`mutool: ${said}`);
    return answer.stdout;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Width and height of each page's media box in millimetres. */
export function readSizes(pdf: Uint8Array): readonly (readonly [number, number])[] {
  const pages = String(run(["pages", "FILE"], pdf));
  return [...pages.matchAll(/<MediaBox l="0" b="0" r="([\d.]+)" t="([\d.]+)"/g)].map(
    ([, right, top]) => [Number(right) * MM_PER_POINT, Number(top) * MM_PER_POINT],
  );
}

/** The text of a file, page by page. */
export function readText(pdf: Uint8Array): string {
  return String(run(["draw", "-q", "-F", "text", "FILE"], pdf));
}

/** A page in grey at so many dots per inch. */
export async function drawnByMupdf(pdf: Uint8Array, dpi: number, page = 1): Promise<GreyPicture> {
  const words = ["draw", "-q", "-r", String(dpi), "-c", "gray", "-F", "pgm", "-o", "-", "FILE"];
  return greyPicture(run([...words, String(page)], pdf), dpi);
}

/** Every object of a file by its number, in PDF's own words, without its stream. */
export function readObjects(pdf: Uint8Array): ReadonlyMap<number, string> {
  const lines = String(run(["show", "FILE", "grep"], pdf));
  return new Map(
    [...lines.matchAll(/^(\d+) 0 obj (.*)$/gm)].map(([, n, text = ""]) => [Number(n), text]),
  );
}

/** What draws a page (from 1), in PDF's own words. */
export function readContents(pdf: Uint8Array, page: number): string {
  return String(run(["show", "-b", "FILE", `pages/${page}/Contents`], pdf));
}
