/** Pages in little memory: Eleventy holds each as a string of two bytes a character until the last one is written. */
import { statSync } from "node:fs";

/** A page as bytes that are let go of once they lie on the disk at the path. */
export type PageBytes = (page: string, path: string) => Buffer;

/** Lets go of written pages when the next one comes: Eleventy goes from page to page without a pause in which to do it. */
export function openPageBytes(): PageBytes {
  const waiting = new Map<string, Buffer>();
  return (page, path) => {
    for (const [place, bytes] of waiting) {
      if (!isWritten(bytes, place)) continue;
      free(bytes);
      waiting.delete(place);
    }
    const bytes = Buffer.from(page);
    waiting.set(path, bytes);
    return bytes;
  };
}

function isWritten({ length }: Buffer, path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.size === length;
}

/** Nothing but a transfer ends an array buffer that others still point to. Node's small buffers share theirs. */
function free({ buffer, length }: Buffer): void {
  if (buffer instanceof ArrayBuffer && buffer.byteLength === length) {
    structuredClone(buffer, { transfer: [buffer] });
  }
}
