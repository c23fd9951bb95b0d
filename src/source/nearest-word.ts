/** Which of the allowed words someone meant, judged by how few letters differ. */

/** The nearest of the allowed words, the first of equally near ones; nothing where none is near. */
export function nearest(written: string, allowed: readonly string[]): string | undefined {
  const word = wordOf(written.slice(0, LONGEST));
  let best: { readonly candidate: string; readonly distance: number } | undefined;
  for (const candidate of allowed) {
    const distance = distanceTo(word, wordOf(candidate));
    if (distance !== undefined && (best === undefined || distance < best.distance)) {
      best = { candidate, distance };
    }
  }
  return best?.candidate;
}

/** Longer words are compared by their beginning, so that a report never takes long. */
const LONGEST = 60;

interface Word {
  readonly text: string;
  readonly parts: readonly string[];
  readonly figures: string;
}

function wordOf(written: string): Word {
  const text = written.toLowerCase();
  return { text, parts: partsOf(text), figures: figuresOf(text) };
}

/** How far apart, or nothing where the two are too far apart to be taken for each other. */
function distanceTo(word: Word, candidate: Word): number | undefined {
  if (candidate.parts.every((part) => word.parts.includes(part))) {
    return word.parts.length - candidate.parts.length;
  }
  // A figure is no slip of another one: A9 is no A3.
  const isOther = word.figures !== "" && candidate.figures !== "";
  if (isOther && word.figures !== candidate.figures) return undefined;
  const [a, b] = [word.text, candidate.text.slice(0, LONGEST)];
  const isShort = a[0] === b[0] && a.length > 2 && isWithin(a, candidate.text);
  const most = mostEdits(a, candidate.text);
  if (!isShort && leastEdits(a, b) > most) return undefined;
  const distance = letterEdits(a, b);
  return isShort || distance <= most ? distance : undefined;
}

/** How many edits two words may be apart to be taken for each other. */
export function mostEdits(a: string, b: string): number {
  const length = Math.max(a.length, b.length);
  return a[0] === b[0] ? Math.ceil(length / 2) : Math.floor(length / 3);
}

/**
 * How many edits two words are apart at least, quickly told: each letter that one has more is one, and so is each that the
 * other lacks. Most words need no closer look.
 */
export function leastEdits(a: string, b: string): number {
  return Math.max(Math.abs(a.length - b.length), lacking(a, b), lacking(b, a));
}

function lacking(a: string, b: string): number {
  let count = 0;
  for (const letter of a) if (!b.includes(letter)) count += 1;
  return count;
}

/** The parts of a word, whatever stands between them: B5 JIS has those of JIS-B5, and DIN A5 has that of A5. */
function partsOf(word: string): readonly string[] {
  return word.split(/[^\p{L}\p{N}]+/u).filter((part) => part !== "");
}

function figuresOf(word: string): string {
  return word.replace(/[^0-9]+/g, "");
}

/** Are the letters of a short form found in the long one, in order (`cols` in `columns`)? */
function isWithin(short: string, long: string): boolean {
  let from = 0;
  for (const letter of short) {
    const found = long.indexOf(letter, from);
    if (found < 0) return false;
    from = found + 1;
  }
  return true;
}

/** Insertions, deletions, replacements and swaps of neighbours that turn one word into the other. */
export function letterEdits(a: string, b: string): number {
  let before: readonly number[] = [];
  let row: readonly number[] = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      next.push(
        Math.min(
          at(row, j) + 1,
          at(next, j - 1) + 1,
          at(row, j - 1) + (same ? 0 : 1),
          swapped ? at(before, j - 2) + 1 : Number.POSITIVE_INFINITY,
        ),
      );
    }
    before = row;
    row = next;
  }
  return at(row, b.length);
}

function at(row: readonly number[], index: number): number {
  return row[index] ?? Number.POSITIVE_INFINITY;
}
