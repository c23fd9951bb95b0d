/** Where the files of the printed typeface lie. */
import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { FONT_FILES } from "../../../print/pdf/font/print-fonts.ts";

/** The paths of those that are printed with, by weight. */
export function fontFiles(): Readonly<Record<"normal" | "bold", readonly string[]>> {
  const folder = fontFolder();
  const pathOf = (name: string) => join(folder, name);
  return { normal: FONT_FILES.normal.map(pathOf), bold: FONT_FILES.bold.map(pathOf) };
}

/** Beside the engine, where the npm package has them; in the typeface's own package else. */
function fontFolder(): string {
  const beside = fileURLToPath(new URL("fonts", import.meta.url));
  if (existsSync(beside)) return beside;
  const require = createRequire(import.meta.url);
  return join(dirname(require.resolve("@fontsource/fira-sans/package.json")), "files");
}
