/** Turns the site's styles, fonts and page scripts into the few files that every page loads. */
import { cp, mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { gatherLicences } from "./gather-licences.mjs";
import { keptBundle, PROJECT } from "./kept-bundle.mjs";

const SOURCES = ["src", "site/script", "site/style"];

/**
 * Writes the style sheets, the scripts and the fonts into a folder, and the licences of what is in them. Throws
 * esbuild's own error on bad source.
 */
export async function bundleAssets(folder) {
  const kept = await keptBundle({ kind: "assets", sources: SOURCES, make: bundle });
  await cp(kept, folder, { recursive: true });
}

async function bundle(folder) {
  // Loaded only where something is to be bundled.
  const esbuild = await import("esbuild");
  // Both are under way before they are waited for: the book is made meanwhile, without a pause.
  const bundles = await Promise.all([
    esbuild.build(styles(folder)),
    esbuild.build(scripts(folder)),
  ]);
  const inputs = bundles.flatMap(({ metafile }) => Object.keys(metafile.inputs));
  const files = bundles.flatMap(({ outputFiles }) => outputFiles);
  await Promise.all([
    ...files.map(place),
    place({ path: join(folder, "licences.txt"), contents: gatherLicences(inputs) }),
  ]);
}

/** What both bundles have in common. */
const BUNDLE = {
  absWorkingDir: PROJECT,
  // Files are written here: what the bundler's own process writes would still come when this one has been stopped.
  write: false,
  bundle: true,
  minify: true,
  // They stand in licences.txt.
  legalComments: "none",
  metafile: true,
  logLevel: "silent",
};

function styles(folder) {
  return {
    ...BUNDLE,
    entryPoints: {
      along: "site/style/along.css",
      book: "site/style/book.css",
      fit: "site/style/fit.css",
      front: "site/style/front.css",
      gallery: "site/style/gallery.css",
      setup: "site/style/your-setup.css",
      setups: "site/style/setups.css",
      strip: "site/style/your-strip.css",
      strips: "site/style/strips.css",
    },
    outdir: folder,
    target: ["chrome100", "firefox110", "safari15.4"],
    loader: { ".woff2": "file" },
    assetNames: "fonts/[name]",
  };
}

/** Classic scripts: a page that is opened from disk may not load modules. */
function scripts(folder) {
  return {
    ...BUNDLE,
    entryPoints: {
      along: "site/script/draw-along/draw-along-page.ts",
      book: "site/script/app/every-page.ts",
      early: "site/script/app/open-early.ts",
      fit: "site/script/fit/fit-page.ts",
      gallery: "site/script/gallery/gallery-page.ts",
      home: "site/script/home/home-page.ts",
      search: "site/script/lazy/search/search.ts",
      recipe: "site/script/recipe/recipe-page.ts",
      editor: "site/script/lazy/editor/editor.ts",
      folder: "site/script/lazy/folder/folder.ts",
      kept: "site/script/kept/kept-page.ts",
      layouts: "site/script/lazy/layouts/layouts.ts",
      measure: "site/script/measure/measure-page.ts",
      bars: "site/script/lazy/bars/bars.ts",
      "bars-measure": "site/script/lazy/bars-measure/bars-measure.ts",
      calendar: "site/script/lazy/calendar/calendar.ts",
      dates: "site/script/lazy/dates/dates.ts",
      names: "site/script/lazy/names/names.ts",
      notebook: "site/script/lazy/notebook/notebook.ts",
      moon: "site/script/lazy/moon/moon.ts",
      offline: "site/script/offline/offline.mjs",
      photo: "site/script/lazy/photo/photo.ts",
      "photo-count": "site/script/lazy/photo-count/photo-count.ts",
      print: "site/script/lazy/print/print.ts",
      reader: "site/script/lazy/reader/reader.ts",
      setup: "site/script/setup/your-setup-page.ts",
      setups: "site/script/setup/setup-page.ts",
      "setup-strip": "site/script/lazy/setup-strip/setup-strip.ts",
      "single-strip": "site/script/lazy/single-strip/single-strip.ts",
      strip: "site/script/strip/your-strip-page.ts",
      turn: "site/script/app/turn-early.ts",
      strips: "site/script/strip/strip-page.ts",
      uses: "site/script/lazy/uses/uses.ts",
      words: "site/script/words/words-page.ts",
      yours: "site/script/gallery/yours-page.ts",
    },
    outdir: folder,
    format: "iife",
    target: "es2020",
    loader: { ".woff": "binary" },
    // A classic script has no address of its own. PDFKit asks for it to find a colour profile, which is not used.
    define: { "import.meta.url": "document.baseURI" },
  };
}

async function place({ path, contents }) {
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, contents);
}
