/** The bytes of a calendar file as its content lines: folded ones joined (RFC 5545, 3.1), each with the number of its line. */

/** One content line, unfolded. */
export interface ContentLine {
  /** From 1: where it begins. */
  readonly line: number;
  readonly bytes: Uint8Array;
}

const [TAB, LF, CR, SPACE] = [0x09, 0x0a, 0x0d, 0x20];
const BOM = [0xef, 0xbb, 0xbf];

/**
 * Lines end with CR LF, LF or CR. They are joined as bytes, for a line is folded after 75 octets, which may be in the middle of a
 * letter. Empty lines are left out.
 */
export function contentLines(file: Uint8Array): readonly ContentLine[] {
  const lines: { line: number; parts: Uint8Array[] }[] = [];
  const bytes = BOM.every((byte, index) => file[index] === byte) ? file.subarray(3) : file;
  let number = 1;
  for (let from = 0; from < bytes.length; number++) {
    let end = from;
    while (end < bytes.length && bytes[end] !== LF && bytes[end] !== CR) end++;
    const isFolded = bytes[from] === SPACE || bytes[from] === TAB;
    const last = isFolded ? lines.at(-1) : undefined;
    if (last) last.parts.push(bytes.subarray(from + 1, end));
    else if (end > from) lines.push({ line: number, parts: [bytes.subarray(from, end)] });
    from = end + (bytes[end] === CR && bytes[end + 1] === LF ? 2 : 1);
  }
  return lines.map(({ line, parts }) => ({ line, bytes: joined(parts) }));
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const [first = new Uint8Array()] = parts;
  if (parts.length <= 1) return first;
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
