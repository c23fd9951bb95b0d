/** The named papers and their sizes in millimetres. */

/** Width and height in millimetres, upright. */
export type PaperMm = readonly [width: number, height: number];

/**
 * Upright sheets by name. A3–A8 and B4–B6 are ISO 216's A and B series; the JIS-B names are the B
 * series of JIS P 0138; A3–A5, B4, B5, JIS-B4, JIS-B5, letter, legal and ledger are page-size keywords
 * of CSS Paged Media Level 3, the last three of 8.5 × 11, 8.5 × 14 and 11 × 17 inches of 25.4 mm.
 */
export const PAPERS = {
  A3: [297, 420],
  A4: [210, 297],
  A5: [148, 210],
  A6: [105, 148],
  A7: [74, 105],
  A8: [52, 74],
  B4: [250, 353],
  B5: [176, 250],
  B6: [125, 176],
  "JIS-B4": [257, 364],
  "JIS-B5": [182, 257],
  "JIS-B6": [128, 182],
  letter: [215.9, 279.4],
  legal: [215.9, 355.6],
  ledger: [279.4, 431.8],
} as const satisfies Readonly<Record<string, PaperMm>>;

export type PaperName = keyof typeof PAPERS;

/** A sheet as it lies, upright or on its side, in millimetres. */
export interface PaperSize {
  readonly width: number;
  readonly height: number;
}

/** A named paper, upright. */
export function paperSize(name: PaperName): PaperSize {
  const [width, height] = PAPERS[name];
  return { width, height };
}

/** Paper turned by a quarter. */
export function sidewise({ width, height }: PaperSize): PaperSize {
  return { width: height, height: width };
}

/** Is it the name of a paper, spelled as in the list? */
export function isPaperName(name: string): name is PaperName {
  return Object.hasOwn(PAPERS, name);
}

/** All names, in the list's order. */
export const PAPER_NAMES: readonly PaperName[] = Object.keys(PAPERS).filter(isPaperName);
