/** Eleventy's setup: brings content, engine and templates together, and watches them while `npm start` runs. */
import { relative } from "node:path";
import syntaxHighlight from "@11ty/eleventy-plugin-syntaxhighlight";
import markdownIt from "markdown-it";
import { bundleAssets } from "./src/build/bundle/bundle-assets.mjs";
import { loadEngine, PROJECT } from "./src/build/bundle/bundle-engine.mjs";

export const config = {
  dir: { input: "site", includes: "../layouts", layouts: "../layouts" },
  markdownTemplateEngine: false,
  htmlTemplateEngine: false,
};

/** Of iPhones, of home screens as the manifest lists them, and cut to any shape. */
const ICON_SIZES = ["180", "192", "512", "512-maskable"];

const NOT_BUILT = "The book could not be built.";

/** A long line of source is reached with the arrow keys. */
const HIGHLIGHTING = { preAttributes: { tabindex: 0 } };

export default function (cfg) {
  const settings = cfg.globalData.settings ?? {};
  const { content: contentFolder = "content", packs = [], host, first, onSettled } = settings;
  const { cache, pages, mode = "build" } = settings;
  const general = `${PROJECT}content/general`;
  const contentFolders = [contentFolder, ...packs.map(({ folder }) => folder), general];
  const markdown = markdownIt({ html: false }).disable("image");
  /** The engine and the book of the last build that went well, and what is wrong since then. */
  let engine;
  let caches;
  let readers;
  let book;
  let report = "";
  let notes = "";
  let ready = first;
  // An edit of the content is to show at once: nothing is bundled for it, and only pages that somebody has opened are written.
  let isCodeOld = true;
  let isBookOld = true;
  let bytesOf;
  let isBookNew = false;
  let codeEdits = 0;
  /** What is written this time. */
  let stale;

  const makeBook = async () => {
    if (isCodeOld) {
      engine = ready?.engine ?? (await loadEngine());
      readers = engine.openReaders();
    }
    caches ??= ready?.caches ?? engine.openCaches(cache);
    const read = ready ?? (await engine.readContent(contentFolder, { packs, general, readers }));
    const { workers } = ready ?? {};
    ready = undefined;
    if (read.report) throw new ContentError(read.report);
    const { content } = read;
    // A build has done so before its workers began.
    if (!workers) engine.tuneForPages(content.recipes.length * content.notebooks.length);
    // A build has said them before; while serving, they are said once.
    if (read.notes && read.notes !== notes) console.log("%s\n", read.notes);
    notes = read.notes ?? "";
    const calling = () => engine.startWorkers({ content, caches, engine, project: PROJECT });
    await (workers ?? calling()).makeArtifacts();
    const highlight = (language, text) =>
      syntaxHighlight.pairedShortcode(text, language, "", HIGHLIGHTING);
    return engine.makeBook({ content, caches, version: engine.version, markdown, highlight });
  };

  // Eleventy would tell on the error stream which function took long.
  cfg.benchmarks.config.setMinimumThresholdMs(0);

  cfg.on("eleventy.beforeWatch", (edited) => {
    isBookOld ||= !edited.every((path) => engine.isAsk(path));
    const isContent = (path) => contentFolders.some((folder) => isWithin(path, folder));
    if (edited.every((path) => engine.isAsk(path) || isContent(path))) return;
    isCodeOld = true;
    codeEdits += 1;
  });
  cfg.on("eleventy.before", async ({ directories, runMode }) => {
    try {
      if (!isBookOld) return;
      const assets = isCodeOld && bundleAssets(`${directories.output}assets`);
      [book] = await Promise.all([makeBook(), assets]);
      if (isCodeOld) engine.writeSideFiles(directories.output, engine.schemaFiles());
      isCodeOld = false;
      isBookNew = true;
      report = "";
      if (mode === "serve") engine.removeStrays(directories.output, book.all);
      else engine.writeSideFiles(directories.output, filesBeside(book));
    } catch (issue) {
      if (runMode === "build" || !engine) throw issue;
      // While serving, the last good pages stay, and are sent with the report.
      report = issue.message;
      const isOurs = !(issue instanceof ContentError);
      console.error("\n%s\n", isOurs ? engine.sayFailure(NOT_BUILT, issue) : report);
      book ??= engine.emptyBook();
    } finally {
      isBookOld = false;
      if (book) stale = pages.stale(book, `${codeEdits}`);
    }
  });
  cfg.on("eleventy.after", () => {
    pages.settle();
    // What a mistake left alone is still in use.
    if (!isBookNew) return;
    isBookNew = false;
    const tally = caches.settle();
    onSettled?.(tally);
  });

  cfg.addGlobalData("book", () => book);
  cfg.addGlobalData("cuttingCaution", () => engine.CUTTING_CAUTION);
  cfg.addGlobalData("lists", () => engine.FORM_LISTS);
  cfg.addGlobalData("pairs", () => stale.pairs);
  cfg.addGlobalData("stripPairs", () => stale.strips);
  cfg.addGlobalData("setupPairs", () => stale.setups);
  cfg.addGlobalData("notebookSlugs", () => stale.notebooks);
  // Eleventy leaves a template out for which this gives `false`.
  cfg.addPreprocessor("stale", "*", ({ page, pagination }) => {
    const isStale = pagination || (isOfGuide(page.inputPath) ? stale.hasGuide : stale.hasLists);
    return isStale ? undefined : false;
  });
  cfg.addNunjucksGlobal("patternPage", (pair) => book.patternPage(pair));
  cfg.addNunjucksGlobal("stripPage", (pair) => book.strips.page(pair));
  cfg.addNunjucksGlobal("setupPage", (pair) => book.setups.page(pair));
  cfg.addNunjucksGlobal("notebookPage", (slug) => book.notebookPage(slug));
  cfg.addNunjucksGlobal("reference", () => engine.reference());
  cfg.addNunjucksGlobal("referenceWords", () => engine.referenceWords());
  cfg.addFilter("codes", (text) => engine.codesHtml(text));
  cfg.addFilter("policyHash", (script) => engine.policyHash(script));
  cfg.addFilter("inlineSvg", (file) => engine.inlineSvg(file));
  cfg.addFilter("sections", (html) => engine.chapterSections(html));
  cfg.addFilter("rel", (to, from) => engine.pageAddress(to, from, book.url));

  // While serving, pages are few at a time and are looked at again.
  cfg.addTransform("bytes", (content, path) => {
    if (mode !== "build" || typeof content !== "string" || !path) return content;
    bytesOf ??= engine.openPageBytes();
    return bytesOf(content, path);
  });
  for (const icon of ["icon.svg", ...ICON_SIZES.map((size) => `icon-${size}.png`)]) {
    cfg.addPassthroughCopy({ [`site/${icon}`]: `assets/${icon}` });
  }
  markdown.core.ruler.push("guide", (state) => {
    if (!state.env.isChapter) return;
    const context = { cache: caches.chapters, version: engine.version };
    state.tokens = engine.showChapter(state, context);
  });
  cfg.setLibrary("md", markdown);
  cfg.addPlugin(syntaxHighlight, HIGHLIGHTING);

  for (const folder of ["src", "layouts", "site/style", "site/script", ...contentFolders]) {
    cfg.addWatchTarget(`${folder}/`);
  }
  // A book's folder may hold more than content: what is kept for the next build, a finished book, a history.
  for (const other of [".*", "_site*"]) cfg.watchIgnores.add(`**${contentFolder}/${other}/**`);
  // An edit is there when its file has not grown for so long.
  cfg.setChokidarConfig({ awaitWriteFinish: { stabilityThreshold: 50, pollInterval: 10 } });
  const sendReport = (_request, response, next) => {
    const end = response.end.bind(response);
    response.end = (body, ...more) =>
      end(typeof body === "string" ? engine.withReport(body, report) : body, ...more);
    next();
  };
  cfg.setServerOptions({
    middleware: [sendReport],
    showAllHosts: isEveryAddress(host),
    messageOnStart: (server) => sayAddress(server, host),
    // A build makes all files; while serving, one is made when somebody opens it.
    onRequest: {
      "/*": async ({ url }) => {
        const path = decodeURIComponent(url.pathname).slice(1);
        if (/(^|\/|\.html)$/.test(path)) return pages.open(path, book);
        return engine.serveFile(path, book);
      },
    },
  });
}

function isOfGuide(path) {
  return path.startsWith("./site/guide/");
}

function isWithin(path, folder) {
  return !relative(folder, path).startsWith("..");
}

function* filesBeside(book) {
  yield* book.sideFiles(book.all);
  for (const file of book.listFiles) yield { path: file.path, text: file.text() };
}

/** Wrong content is told in the report's own words, without a trace of the program's. */
class ContentError extends Error {
  skipOriginalStack = true;
}

/** Two of them stand for all addresses of a computer (RFC 1122, 3.2.1.3; RFC 4291, 2.5.2). */
function isEveryAddress(host) {
  return host === "0.0.0.0" || host === "::";
}

/** What listens only to this computer is found there by its usual name. */
function sayAddress({ hosts, localhostUrl }, host) {
  const isNamed = host === "127.0.0.1" || isEveryAddress(host);
  const named = localhostUrl.replace("localhost", host.includes(":") ? `[${host}]` : host);
  return `The book lies open at ${isNamed ? hosts.join(" or ") : named} (Ctrl-C closes it)`;
}
