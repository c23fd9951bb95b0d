/** Bytes as UTF-8 text, or where the first of them is that is none. */

/** The text; or the line and the column, both from 1, of the first character that is not UTF-8. */
export type Utf8Text =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly line: number; readonly column: number };

/** A byte order mark stays in the text. */
export function utf8Text(bytes: Uint8Array): Utf8Text {
  const text = textOf(bytes, false);
  if (text !== undefined) return { ok: true, text };
  const lines = (textOf(bytes.subarray(0, goodBytes(bytes)), true) ?? "").split(/\r\n?|\n/);
  return { ok: false, line: lines.length, column: (lines.at(-1) ?? "").length + 1 };
}

/** How many bytes from the first on are UTF-8, or could become so with those behind them: halved down to the last one. */
function goodBytes(bytes: Uint8Array): number {
  let good = 0;
  let bad = bytes.length + 1;
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (textOf(bytes.subarray(0, middle), true) === undefined) bad = middle;
    else good = middle;
  }
  return good;
}

/** With more to come, a character that is cut off at the end is no mistake and is left out. */
function textOf(bytes: Uint8Array, isMoreToCome: boolean): string | undefined {
  try {
    const decoder = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
    return decoder.decode(bytes, { stream: isMoreToCome });
  } catch {
    return undefined;
  }
}
