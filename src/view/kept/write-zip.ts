/** Packs a content folder as a zip: the same files give the same bytes. */
import { strToU8, zipSync } from "fflate";
import type { TextFile } from "../../issue/facts/reading.ts";

/** The oldest day that a zip can say (APPNOTE.TXT 4.4.6): when the files were made is nobody's business. */
const NO_DAY = "1980-01-01T12:00:00";

/** The zip's bytes; the folder's files lie at its top. */
export function writeZip(files: readonly TextFile[]): Uint8Array {
  const entries = files.map(({ path, text }) => [path, strToU8(text)] as const);
  return zipSync(Object.fromEntries(entries), { level: 9, mtime: NO_DAY });
}
