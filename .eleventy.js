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

const NOT_BUILT = "The book could not be built.";

/** A long line of source is reached with the arrow keys. */
const HIGHLIGHTING = { preAttributes: { tabindex: 0 } };

export default function (cfg) {
  const settings = cfg.globalData.settings ?? {};
  const { content: contentFolder = "content", packs = [], host, first, onSettled } = settings;
  const { cache, mode = "build" } = settings;
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
  // An edit of the content is to show at once: nothing is bundled for it, and pages that stay as they are stay.
  let isCodeOld = true;
  let codeEdits = 0;
  let pagesWritten;
  /** What is written this time. Of the guide and the lists, nothing where all is kept. */
  let stale;
  let isAllKept = false;

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
    // A build has said them before; while serving, they are said once.
    if (read.notes && read.notes !== notes) console.log("%s\n", read.notes);
    notes = read.notes ?? "";
    const calling = () => engine.startWorkers({ content, caches, engine, project: PROJECT });
    await (workers ?? calling()).makeArtifacts();
    const highlight = (language, text) =>
      syntaxHighlight.pairedShortcode(text, language, "", HIGHLIGHTING);
    return engine.makeBook({ content, caches, version: engine.version, markdown, highlight });
  };

  const stalePages = () => {
    if (mode === "build") return { ...book.all, hasGuide: true, hasLists: true };
    pagesWritten ??= engine.openPagesWritten();
    return pagesWritten.stale(book, `${codeEdits}`);
  };

  // Eleventy would tell on the error stream which function took long.
  cfg.benchmarks.config.setMinimumThresholdMs(0);

  cfg.on("eleventy.beforeWatch", (edited) => {
    if (edited.every((path) => contentFolders.some((folder) => isWithin(path, folder)))) return;
    isCodeOld = true;
    codeEdits += 1;
  });
  cfg.on("eleventy.before", async ({ directories, runMode }) => {
    try {
      const assets = isCodeOld && bundleAssets(`${directories.output}assets`);
      [book] = await Promise.all([makeBook(), assets]);
      if (isCodeOld) engine.writeSideFiles(directories.output, engine.schemaFiles());
      isCodeOld = false;
      report = "";
      isAllKept = false;
      stale = stalePages();
      engine.writeSideFiles(directories.output, book.sideFiles(stale));
      if (mode === "serve") engine.removeStrays(directories.output, book.all);
      else engine.writeSideFiles(directories.output, listFiles(book));
    } catch (issue) {
      if (runMode === "build" || !engine) throw issue;
      // While serving, the last good pages stay, and are sent with the report.
      report = issue.message;
      const isOurs = !(issue instanceof ContentError);
      console.error("\n%s\n", isOurs ? engine.sayFailure(NOT_BUILT, issue) : report);
      isAllKept = book !== undefined && !isCodeOld;
      book ??= engine.emptyBook();
      if (!isAllKept) stale = stalePages();
    }
  });
  cfg.on("eleventy.after", () => {
    if (isAllKept) return;
    pagesWritten?.settle();
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
    return isStale && !isAllKept ? undefined : false;
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

  for (const icon of ["icon.svg", "icon-192.png"]) {
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
    // A build makes all of these; while serving, one is made when somebody opens it.
    onRequest: {
      "/*.pdf": ({ url }) => pdfAnswer(book, url),
      "/*.(js|xml)": ({ url }) => listAnswer(book, url),
    },
  });
}

function isOfGuide(path) {
  return path.startsWith("./site/guide/");
}

function isWithin(path, folder) {
  return !relative(folder, path).startsWith("..");
}

async function pdfAnswer(book, { pathname }) {
  try {
    const bytes = await book.askPdf(pathname.slice(1));
    return bytes && new Response(bytes, { headers: { "content-type": "application/pdf" } });
  } catch (error) {
    console.error(error);
    return { status: 500, body: "This file cannot be made." };
  }
}

function* listFiles(book) {
  for (const file of book.listFiles) yield { path: file.path, text: file.text() };
}

function listAnswer(book, { pathname }) {
  const file = book.listFiles.find(({ path }) => path === pathname.slice(1));
  const type = pathname.endsWith(".js") ? "text/javascript" : "application/xml";
  return file && { headers: { "content-type": type }, body: file.text() };
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
