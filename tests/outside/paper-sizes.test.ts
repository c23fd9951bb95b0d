/** Our named papers against the standards and lists that others publish. */
import { describe, expect, it } from "vitest";
import { isPaperName, PAPER_NAMES, PAPERS, type PaperName } from "../../src/notebook/paper.ts";

/** Sizes in millimetres as published lists have them, upright. */
type Size = readonly [width: number, height: number];

/**
 * ISO 216:2007, trimmed sizes of the A and B series, and JIS P 0138:1998, B series. The A and ISO B
 * columns as printed in the page-size reference of Prince 7.1 (princexml.com/doc/7.1/page-size), the
 * JIS column in public tables of JIS P 0138.
 */
const ISO_A: readonly Size[] = [
  [841, 1189],
  [594, 841],
  [420, 594],
  [297, 420],
  [210, 297],
  [148, 210],
  [105, 148],
  [74, 105],
  [52, 74],
];
const ISO_B: readonly Size[] = [
  [1000, 1414],
  [707, 1000],
  [500, 707],
  [353, 500],
  [250, 353],
  [176, 250],
  [125, 176],
];
const JIS_B: readonly Size[] = [
  [1030, 1456],
  [728, 1030],
  [515, 728],
  [364, 515],
  [257, 364],
  [182, 257],
  [128, 182],
];

const SERIES = [
  ["ISO 216 A", ISO_A, "A"],
  ["ISO 216 B", ISO_B, "B"],
  ["JIS P 0138 B", JIS_B, "JIS-B"],
] as const;

describe.each(SERIES)("%s", (_, sizes, prefix) => {
  const ours = PAPER_NAMES.filter((name) => new RegExp(`^${prefix}\\d$`).test(name));

  it("is the series of some of our papers", () => {
    expect(ours.length).toBeGreaterThanOrEqual(3);
  });

  it.each(ours)("%s has the published size", (name) => {
    expect(PAPERS[name]).toEqual(sizes[Number(name.at(-1))]);
  });

  // ISO 216: each size is the one before it cut in half, a fraction of a millimetre dropped (from memory).
  it.each(ours)("%s is the size before it, cut in half", (name) => {
    const before = sizes[Number(name.at(-1)) - 1];
    expect(before).toBeDefined();
    const [width = 0, height = 0] = before ?? [];
    expect(PAPERS[name]).toEqual([Math.floor(height / 2), width]);
  });
});

/**
 * CSS Paged Media Module Level 3, section "Page size: the size property", <page-size>: the whole list of
 * keywords (as on MDN, @page/size, and in the web platform test css/css-page/page-size-011).
 */
const CSS_PAGE_SIZES: readonly (readonly [keyword: string, size: Size])[] = [
  ["A5", [148, 210]],
  ["A4", [210, 297]],
  ["A3", [297, 420]],
  ["B5", [176, 250]],
  ["B4", [250, 353]],
  ["JIS-B5", [182, 257]],
  ["JIS-B4", [257, 364]],
  ["letter", [8.5 * 25.4, 11 * 25.4]],
  ["legal", [8.5 * 25.4, 14 * 25.4]],
  ["ledger", [11 * 25.4, 17 * 25.4]],
];

describe("a page-size keyword of CSS Paged Media", () => {
  it.each(CSS_PAGE_SIZES)("%s is a paper of that name and size", (keyword, size) => {
    const ours = isPaperName(keyword) ? PAPERS[keyword].map((mm) => mm.toFixed(6)) : [];
    expect(ours).toEqual(size.map((mm) => mm.toFixed(6)));
  });
});

/** PDFKit's table of page sizes in points, lib/page.js of foliojs/pdfkit: width and height, two decimals. */
const PDFKIT_POINTS: readonly (readonly [ours: PaperName, points: Size])[] = [
  ["A3", [841.89, 1190.55]],
  ["A4", [595.28, 841.89]],
  ["A5", [419.53, 595.28]],
  ["A6", [297.64, 419.53]],
  ["A7", [209.76, 297.64]],
  ["A8", [147.4, 209.76]],
  ["B4", [708.66, 1000.63]],
  ["B5", [498.9, 708.66]],
  ["B6", [354.33, 498.9]],
  ["letter", [612, 792]],
  ["legal", [612, 1008]],
  // PDFKit's TABLOID, 11 × 17 inches upright, is CSS's ledger.
  ["ledger", [792, 1224]],
];

describe("a page size of PDFKit", () => {
  it.each(PDFKIT_POINTS)("%s has as many points", (name, points) => {
    const ours = PAPERS[name].map((mm) => Number(((mm * 72) / 25.4).toFixed(2)));
    expect(ours).toEqual(points);
  });
});

describe("our papers", () => {
  it("are all checked by a standard", () => {
    const checked = new Set([
      ...PAPER_NAMES.filter((name) => /^(A|B|JIS-B)\d$/.test(name)),
      ...CSS_PAGE_SIZES.map(([keyword]) => keyword),
    ]);
    expect(PAPER_NAMES.filter((name) => !checked.has(name))).toEqual([]);
  });

  it("stand upright, narrower than high", () => {
    for (const name of PAPER_NAMES) expect(PAPERS[name][0]).toBeLessThan(PAPERS[name][1]);
  });
});
