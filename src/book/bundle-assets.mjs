/** Turns the site's styles, fonts and page scripts into the few files that every page loads. */
import { mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import * as esbuild from "esbuild";
import { PROJECT } from "./bundle-engine.mjs";
import { gatherLicences } from "./gather-licences.mjs";

/**
 * Writes the style sheets, the scripts and the fonts into a folder, and the licences of what is in them. The scripts
 * are classic ones: a page that is opened from disk may not load modules. Throws esbuild's own error on bad source.
 */
export async function bundleAssets(folder) {
  const styles = esbuild.build({
    absWorkingDir: PROJECT,
    entryPoints: {
      along: "site/style/along.css",
      book: "site/style/book.css",
      fit: "site/style/fit.css",
      gallery: "site/style/gallery.css",
      strips: "site/style/strips.css",
    },
    outdir: folder,
    write: false,
    bundle: true,
    minify: true,
    target: ["chrome100", "firefox110", "safari15.4"],
    loader: { ".woff2": "file" },
    assetNames: "fonts/[name]",
    metafile: true,
    logLevel: "silent",
  });
  const scripts = esbuild.build({
    absWorkingDir: PROJECT,
    entryPoints: {
      along: "site/script/along/along.ts",
      book: "site/script/book.ts",
      early: "site/script/open-early.ts",
      fit: "site/script/fit/fit.ts",
      gallery: "site/script/gallery/gallery.ts",
      search: "site/script/gallery/search.ts",
      desk: "site/script/desk/desk.ts",
      editor: "site/script/editor/editor.ts",
      measure: "site/script/measure/measure.ts",
      offline: "site/script/offline/offline.mjs",
      print: "site/script/print/print.ts",
      reader: "site/script/reader/reader.ts",
    },
    loader: { ".woff": "binary" },
    // A classic script has no address of its own. PDFKit asks for it to find a colour profile, which is not used.
    define: { "import.meta.url": "document.baseURI" },
    outdir: folder,
    write: false,
    bundle: true,
    minify: true,
    format: "iife",
    target: "es2020",
    metafile: true,
    logLevel: "silent",
  });
  // Both are under way before they are waited for: the book is made meanwhile, without a pause.
  const bundles = await Promise.all([styles, scripts]);
  const inputs = bundles.flatMap(({ metafile }) => Object.keys(metafile.inputs));
  // Written here: what the bundler's own process writes would still come when this one has been stopped.
  const files = bundles.flatMap(({ outputFiles }) => outputFiles);
  await Promise.all([
    ...files.map(place),
    place({ path: join(folder, "licences.txt"), contents: gatherLicences(inputs) }),
  ]);
}

async function place({ path, contents }) {
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, contents);
}
