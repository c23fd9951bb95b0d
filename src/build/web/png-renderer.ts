/** Turns drawings into PNG pictures, with the book's own typeface. */
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { PREVIEW_PIXELS } from "../../draw/page/preview-scene.ts";
import { unpackWoff } from "../../print/pdf/font/unpack-woff.ts";
import { fontFiles } from "../artifacts/pdf/font-folder.ts";

/** The bytes of a PNG file from the text of an SVG file. */
export type Paint = (svg: string) => Promise<Uint8Array>;

/** Nothing is loaded before the first picture. `folder` keeps the unpacked fonts. */
export function openPngRenderer(folder: string): Paint {
  let fontFiles: readonly string[] | undefined;
  return async (svg) => {
    const { renderAsync } = await import("@resvg/resvg-js");
    fontFiles ??= unpackFonts(folder);
    const picture = await renderAsync(svg, {
      fitTo: { mode: "width", value: PREVIEW_PIXELS.width },
      font: { loadSystemFonts: false, fontFiles: [...fontFiles], defaultFontFamily: "Fira Sans" },
    });
    return picture.asPng();
  };
}

/** The painter reads fonts from disk, and only unpacked ones. */
function unpackFonts(folder: string): readonly string[] {
  mkdirSync(folder, { recursive: true });
  const { normal, bold } = fontFiles();
  return [...normal, ...bold].map((packed) => {
    const target = join(folder, basename(packed).replace(/woff$/, "ttf"));
    if (!existsSync(target)) {
      const draft = `${target}.${process.pid}.draft`;
      writeFileSync(draft, unpackWoff(new Uint8Array(readFileSync(packed))));
      renameSync(draft, target);
    }
    return target;
  });
}
