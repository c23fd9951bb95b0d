/** Which of the allowed words someone meant, judged by how few letters differ. */

/** The nearest of the allowed words, the first of equally near ones; nothing where none is near. */
export function nearest(written: string, allowed: readonly string[]): string | undefined {
  const word = written.slice(0, LONGEST).toLowerCase();
  let best: { readonly candidate: string; readonly distance: number } | undefined;
  for (const candidate of allowed) {
    const distance = distanceTo(word, candidate.toLowerCase());
    if (distance !== undefined && (best === undefined || distance < best.distance)) {
      best = { candidate, distance };
    }
  }
  return best?.candidate;
}

/** Longer words are compared by their beginning, so that a report never takes long. */
const LONGEST = 60;

/** How far apart, or nothing where the two are too far apart to be taken for each other. */
function distanceTo(word: string, candidate: string): number | undefined {
  const parts = partsOf(word);
  const expected = partsOf(candidate);
  if (expected.every((part) => parts.includes(part))) return parts.length - expected.length;
  // A figure is no slip of another one: A9 is no A3.
  const [figures, others] = [figuresOf(word), figuresOf(candidate)];
  if (figures !== "" && others !== "" && figures !== others) return undefined;
  const distance = letterEdits(word, candidate.slice(0, LONGEST));
  const length = Math.max(word.length, candidate.length);
  const alike = word[0] === candidate[0];
  if (distance <= (alike ? Math.ceil(length / 2) : Math.floor(length / 3))) return distance;
  if (alike && word.length > 2 && isWithin(word, candidate)) return distance;
  return undefined;
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
