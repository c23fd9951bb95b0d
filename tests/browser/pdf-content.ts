/** What a PDF file holds, however its streams were packed: two programs' zlib may pack the same bytes differently. */
import { inflateSync } from "node:zlib";

/** All objects as text, streams unpacked; lengths of packed streams and the places that follow from them are left out. */
export function pdfContent(file: Uint8Array): string {
  return Buffer.from(file)
    .toString("latin1")
    .replace(/(?<=FlateDecode[\s\S]{0,40})stream\n([\s\S]*?)\nendstream/g, (_, packed: string) =>
      inflateSync(Buffer.from(packed, "latin1")).toString("latin1"),
    )
    .replace(/\/Length \d+/g, "/Length")
    .replace(/^\d{10} \d{5} n ?$/gm, "")
    .replace(/startxref\n\d+/, "startxref");
}
