/** Finished PDF files by what they were made from, on disk between builds, and the fonts that new ones are made with. */
import { readFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import type { FontLists } from "../../../print/pdf/font/print-font.ts";
import { readFonts } from "../../../print/pdf/font/print-fonts.ts";
import { diskCache } from "../cache/disk-cache.ts";
import { fontFiles } from "./font-folder.ts";

export interface PdfCache {
  /** Where its files lie, so that another thread finds them. */
  readonly folder: string;
  /** Where the file made from these sources lies; undefined where there is none yet. */
  find(key: string): string | undefined;
  /** The file's bytes, made now where there are none. One after another: fonts are shared. */
  take(key: string, make: (fonts: FontLists) => Promise<Uint8Array>): Promise<Uint8Array>;
  /** Clears the disk of what is too much, but for the files in use. */
  sweep(inUse: ReadonlySet<string>): void;
}

const DISK_BYTES = 256 << 20;

/** A cache that keeps its files in a folder of its own. Fonts are opened when the first file is made. */
export function openPdfCache(folder: string): PdfCache {
  const disk = diskCache(folder, "pdf");
  let fonts: FontLists | undefined;
  let last: Promise<unknown> = Promise.resolve();
  const makeNow = async (
    key: string,
    make: (fonts: FontLists) => Promise<Uint8Array>,
  ): Promise<Uint8Array> => {
    fonts ??= openFonts();
    const bytes = await make(fonts);
    disk.write(key, bytes);
    return bytes;
  };
  return {
    folder,
    find: (key) => disk.find(key),
    take: async (key, make) => {
      const path = disk.find(key);
      if (path !== undefined) return readFile(path);
      const made = last.then(() => makeNow(key, make));
      last = made.catch(() => undefined);
      return made;
    },
    sweep: (inUse) => disk.sweep(DISK_BYTES, inUse),
  };
}

function openFonts(): FontLists {
  const { normal, bold } = fontFiles();
  const bytesOf = (path: string) => new Uint8Array(readFileSync(path));
  return readFonts({ normal: normal.map(bytesOf), bold: bold.map(bytesOf) });
}
