/** A book whose pages note what goes wrong on them, the same in every engine: on a server and on disk. */
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type Served, serveFolder } from "../browser/serve-folder.ts";

/** Where a page notes what went wrong on it and on those before it. */
export const NOTES = "engine-notes";

/**
 * Runs before all scripts of a page: errors, files that do not come, what the policy refuses, what scripts complain of.
 * Nobody sees a print dialog, so none is opened.
 */
const WATCH = `{
  window.print = () => {};
  // A page that is left while something still loads has not failed.
  let isLeft = false;
  addEventListener("beforeunload", () => (isLeft = true));
  const note = (...words) => {
    if (isLeft) return;
    const before = sessionStorage.getItem("${NOTES}") ?? "";
    sessionStorage.setItem("${NOTES}", before + words.map(String).join(" ") + "\\n");
  };
  addEventListener("error", ({ message, target }) => note(message ?? "did not come: " + (target.src ?? target.href)), true);
  addEventListener("unhandledrejection", ({ reason }) => note(reason));
  document.addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI }) => note("refused by", violatedDirective, blockedURI));
  for (const kind of ["error", "warn"]) {
    const say = console[kind];
    console[kind] = (...words) => (note(...words), say.call(console, ...words));
  }
}
`;

/** A browser that refuses to keep anything, as far as a page can tell. */
const REFUSE = `Object.defineProperty(window, "localStorage", {
  get() {
    throw new DOMException("refused", "SecurityError");
  },
});
`;

const SUB_PATH = "/deep/down/";

export interface WatchedBook {
  /** The address of a page of the book on a server. */
  served(path: string): string;
  /** The same of the book with all patterns. */
  whole(path: string): string;
  /** The same for a browser that refuses to keep anything. */
  refused(path: string): string;
  /** The address of a page of the small book on disk. */
  onDisk(path: string): string;
  /** Takes the server away, or brings it back. */
  connect(isConnected: boolean): void;
  close(): Promise<void>;
}

/** The folders of three built books. */
interface Books {
  readonly book: string;
  readonly whole: string;
  readonly tiny: string;
}

export async function openWatchedBook({ book, whole, tiny }: Books): Promise<WatchedBook> {
  const folder = mkdtempSync(join(tmpdir(), "spanbook-engines-"));
  const disk = join(folder, "tiny");
  cpSync(tiny, disk, { recursive: true });
  writeFileSync(join(disk, "watch.js"), WATCH);
  const paths = readdirSync(disk, { recursive: true, encoding: "utf8" });
  for (const path of paths.filter((one) => one.endsWith(".html"))) {
    const html = readFileSync(join(disk, path), "utf8");
    writeFileSync(
      join(disk, path),
      withScript(html, `${"../".repeat(path.split("/").length - 1)}watch.js`),
    );
  }
  let isConnected = true;
  const serve = (from: string, name: string, script: string): Promise<Served> => {
    writeFileSync(join(folder, name), script);
    return serveFolder(
      (path) => (isConnected ? (path === SUB_PATH + name ? folder : from) : undefined),
      SUB_PATH,
      undefined,
      (html) => withScript(html, SUB_PATH + name),
    );
  };
  const served = await serve(book, "watch.js", WATCH);
  const all = await serve(whole, "watch.js", WATCH);
  const refused = await serve(book, "refuse.js", WATCH + REFUSE);
  return {
    served: (path) => served.address + path,
    whole: (path) => all.address + path,
    refused: (path) => refused.address + path,
    onDisk: (path) => {
      const [file = "", ...hash] = path.split("#");
      return [pathToFileURL(join(disk, file)).href, ...hash].join("#");
    },
    connect: (now) => {
      isConnected = now;
    },
    close: async () => {
      await served.close();
      await all.close();
      await refused.close();
      rmSync(folder, { recursive: true });
    },
  };
}

/** The script comes before all others. */
function withScript(html: string, address: string): string {
  return html.replace("</title>", `</title><script src="${address}"></script>`);
}
