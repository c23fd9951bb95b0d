/** Turns the site's styles, fonts and page scripts into the few files that every page loads. */
import * as esbuild from "esbuild";
import { PROJECT } from "./bundle-engine.mjs";

/**
 * Writes `book.css`, `book.js` and the fonts into a folder. The script is a classic one: a page that is opened
 * from disk may not load modules. Throws esbuild's own error on bad source.
 */
export async function bundleAssets(folder) {
  await esbuild.build({
    absWorkingDir: PROJECT,
    entryPoints: { book: "site/style/book.css" },
    outdir: folder,
    bundle: true,
    minify: true,
    target: ["chrome100", "firefox110", "safari15.4"],
    loader: { ".woff2": "file" },
    assetNames: "fonts/[name]",
    logLevel: "silent",
  });
  await esbuild.build({
    absWorkingDir: PROJECT,
    entryPoints: { book: "site/script/book.ts" },
    outdir: folder,
    bundle: true,
    minify: true,
    format: "iife",
    target: "es2020",
    logLevel: "silent",
  });
}
