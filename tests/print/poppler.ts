/** What poppler, which is not ours, reads in a PDF: lines in millimetres, text, fonts, boxes. */
import { spawnSync } from "node:child_process";
import { needDebian } from "../setup/need-debian.ts";

/** Runs one of poppler's programs on a PDF; installs them where they are missing. */
function run(program: string, options: readonly string[], pdf: Uint8Array): Buffer {
  const ask = () => spawnSync(program, options, { input: pdf, maxBuffer: 1 << 28 });
  let answer = ask();
  if (answer.error !== undefined) {
    needDebian(["poppler-utils"]);
    answer = ask();
  }
  const said = String(answer.stderr);
  if (answer.status !== 0 || said !== "") throw new Error(`${program}: ${answer.error ?? said}`);
  return answer.stdout;
}

/** A straight line in millimetres from the top left corner of the page. */
export interface ReadLine {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** One stroke of a pen: all lines of one path. */
export interface ReadStroke {
  readonly lines: readonly ReadLine[];
  readonly isDashed: boolean;
  /** Of the pen, in millimetres. */
  readonly width: number;
}

const MM_PER_POINT = 25.4 / 72;

/** All strokes of a page (from 1). Without the two options pdftocairo would fit the page to whole points. */
export function readStrokes(pdf: Uint8Array, page = 1): readonly ReadStroke[] {
  const range = ["-f", String(page), "-l", String(page)];
  const svg = String(
    run("pdftocairo", ["-svg", "-noshrink", "-nocenter", ...range, "-", "-"], pdf),
  );
  return [...svg.matchAll(/<path\b[^>]*>/g)].flatMap(([element]) => strokeOf(element));
}

/** Older cairos write the look as one style, newer ones as attributes. */
function strokeOf(element: string): readonly ReadStroke[] {
  const width = /stroke-width(?:="|:)([\d.]+)/.exec(element)?.[1];
  if (width === undefined) return [];
  const data = /\bd="([^"]*)"/.exec(element)?.[1] ?? "";
  const matrix = /transform="matrix\(([^)]*)\)"/.exec(element)?.[1]?.split(",").map(Number);
  const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = matrix ?? [];
  const point: ToPage = (x, y) => [
    (a * x + c * y + e) * MM_PER_POINT,
    (b * x + d * y + f) * MM_PER_POINT,
  ];
  return [
    {
      lines: linesOf(data, point),
      isDashed: /stroke-dasharray(?:="|:)[\d.]/.test(element),
      width: Number(width) * Math.sqrt(Math.abs(a * d - b * c)) * MM_PER_POINT,
    },
  ];
}

type ToPage = (x: number, y: number) => readonly [number, number];

function linesOf(data: string, point: ToPage): readonly ReadLine[] {
  let [start, here] = [point(0, 0), point(0, 0)];
  return [...data.matchAll(/([MLCZ])([^MLCZ]*)/g)].flatMap(([, command, written = ""]) => {
    const [x1, y1] = here;
    const numbers = written.trim().split(/\s+/).map(Number);
    here = command === "Z" ? start : point(numbers.at(-2) ?? 0, numbers.at(-1) ?? 0);
    if (command === "M") start = here;
    const [x2, y2] = here;
    return command === "L" || command === "Z" ? [{ x1, y1, x2, y2 }] : [];
  });
}

/** The text of a page or of all, in the order in which it was written, lines as they lie. */
export function readText(pdf: Uint8Array, page?: number): string {
  const range = page === undefined ? [] : ["-f", String(page), "-l", String(page)];
  return String(run("pdftotext", ["-raw", ...range, "-", "-"], pdf)).normalize("NFC");
}

/** The text of a file as a reader copies it: lines as they lie, read in the direction of their script. */
export function readCopied(pdf: Uint8Array): string {
  const text = String(run("pdftotext", ["-", "-"], pdf)).normalize("NFC");
  // Poppler sets marks of direction around what runs to the left.
  return text.replace(/[\u202a-\u202e\u2066-\u2069\u200e\u200f]/g, "").trim();
}

/** A word and the box that its font and size give it, in millimetres. */
export interface ReadWord {
  readonly text: string;
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** The words of a file's first page. */
export function readWords(pdf: Uint8Array): readonly ReadWord[] {
  const html = String(run("pdftotext", ["-bbox", "-l", "1", "-", "-"], pdf));
  const found = html.matchAll(
    /<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">([^<]*)</g,
  );
  return [...found].map(([, ...parts]) => {
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = parts.slice(0, 4).map((n) => Number(n) * MM_PER_POINT);
    return { text: parts[4] ?? "", x1, y1, x2, y2 };
  });
}

export interface ReadFont {
  readonly name: string;
  readonly isEmbedded: boolean;
  readonly isSubset: boolean;
  readonly hasUnicode: boolean;
}

/** The fonts of a file. */
export function readFonts(pdf: Uint8Array): readonly ReadFont[] {
  const rows = String(run("pdffonts", ["-"], pdf))
    .trim()
    .split("\n")
    .slice(2);
  return rows.map((row) => {
    const [, name = "", emb, sub, uni] =
      /^(\S+|\[none\])\s.*\s(yes|no)\s+(yes|no)\s+(yes|no)\s+\d+\s+\d+$/.exec(row) ?? [];
    return {
      name,
      isEmbedded: emb === "yes",
      isSubset: sub === "yes",
      hasUnicode: uni === "yes",
    };
  });
}

/** Facts of a file and of its pages, as `pdfinfo` names them. */
export function readFacts(pdf: Uint8Array, options: readonly string[] = []): string {
  return String(run("pdfinfo", [...options, "-"], pdf));
}

/** Width and height of each page's media box in millimetres. */
export function readSizes(pdf: Uint8Array): readonly (readonly [number, number])[] {
  const facts = readFacts(pdf, ["-f", "1", "-l", "9999"]);
  return [...facts.matchAll(/^Page\s+\d+ size:\s+([\d.]+) x ([\d.]+) pts/gm)].map(
    ([, width, height]) => [Number(width) * MM_PER_POINT, Number(height) * MM_PER_POINT],
  );
}

/** A file's first page as poppler writes it anew: as it looks, and without tags. */
export function rewritten(pdf: Uint8Array): Uint8Array {
  return run("pdftocairo", ["-pdf", "-l", "1", "-", "-"], pdf);
}

/** What part of a file is pictured: a page from 1, and of it some rows in millimetres from its top. */
interface PicturePart {
  readonly page?: number;
  readonly rows?: { readonly from: number; readonly to: number };
  /** As netpbm's grey map. */
  readonly isMap?: boolean;
}

/** A page, or some rows of it, as a PNG in grey or as a grey map, at so many dots per inch. */
export function readPicture(
  pdf: Uint8Array,
  dpi: number,
  { page = 1, rows, isMap = false }: PicturePart = {},
): Buffer {
  const range = ["-f", String(page), "-l", String(page), "-singlefile"];
  const pixels = (mm: number) => Math.floor((mm * dpi) / 25.4);
  const crop = rows
    ? [
        "-x",
        "0",
        "-W",
        String(pixels(2_000)),
        "-y",
        String(pixels(rows.from)),
        "-H",
        String(pixels(rows.to) - pixels(rows.from) + 1),
      ]
    : [];
  const form = isMap ? ["-gray"] : ["-gray", "-png"];
  return run("pdftoppm", [...form, "-r", String(dpi), ...crop, ...range, "-"], pdf);
}
