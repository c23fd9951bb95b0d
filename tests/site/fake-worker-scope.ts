/** A service worker's surroundings for tests: caches and a network as tables of the files in them. */
import type { FileCache, WorkerScope } from "../../site/script/offline/worker-scope.ts";

/** The book of the tests; others may lie beside it and in it. */
export const BOOK = "https://lane.example/book/";

/** What a server has for a request: a text, a status, or no answer at all. */
export type Served = string | number | "dead";

export interface FakeWorld {
  readonly scope: WorkerScope;
  /** What is kept, one line a cache: `own: a.html b.html`. */
  kept(): readonly string[];
  /** What was asked of the network so far, in order. */
  readonly asked: string[];
}

export interface WrittenWorld {
  /** One line a cache, in the order in which they were made: `old: a.html b.html`. */
  readonly caches: readonly string[];
  readonly network?: (path: string) => Served;
  /** The addresses of open pages by their ids. */
  readonly clients?: Readonly<Record<string, string>>;
  readonly isInstalling?: boolean;
}

/** The worker of the build `own`. A kept file's text is the name of its cache. */
export function fakeWorld(written: WrittenWorld): FakeWorld {
  const { caches, network = () => "dead", clients = {}, isInstalling = false } = written;
  const stored = new Map(caches.map(cacheIn));
  const asked: string[] = [];
  const open = async (name: string) => {
    const files = stored.get(name) ?? new Map<string, string>();
    stored.set(name, files);
    return fakeCache(files);
  };
  return {
    asked,
    kept: () => [...stored].map(([name, files]) => lineOf(name, [...files.keys()])),
    scope: {
      spanbookBuild: { version: "own", shell: [], names: NAMES },
      caches: {
        open,
        keys: async () => [...stored.keys()],
        delete: async (name) => stored.delete(name),
      },
      registration: { scope: BOOK, installing: isInstalling ? {} : null, waiting: null },
      clients: {
        claim: async () => undefined,
        get: async (id) => {
          const url = clients[id];
          return url === undefined ? undefined : { url };
        },
      },
      fetch: async (request) => {
        const path = pathIn(typeof request === "string" ? request : request.url);
        asked.push(path);
        return answerOf(network(path), path);
      },
      skipWaiting: async () => undefined,
      addEventListener: () => undefined,
    },
  };
}

/** What lies at the book's root. */
const NAMES = ["index.html", "a.html", "b.html", "c.html", "a.svg", "book.css", "patterns"];

function cacheIn(line: string): [string, Map<string, string>] {
  const [name = "", files = ""] = line.split(/:(?: |$)/);
  const paths = files.split(" ").filter((path) => path !== "");
  const full = name.includes(" ") ? `spanbook ${name.replace(" ", "/ ")}` : `${OWN}${name}`;
  return [full, new Map(paths.map((path) => [addressOf(path), name]))];
}

const OWN = `spanbook ${BOOK} `;

function lineOf(name: string, addresses: readonly string[]): string {
  const short = name.startsWith(OWN)
    ? name.slice(OWN.length)
    : name.replace(/^spanbook (.*)\/ /, "$1 ");
  return `${short}: ${addresses.map(pathIn).sort().join(" ")}`.trim();
}

/** Of a file of the book; another book's file is written with its whole address. */
export function addressOf(path: string): string {
  return new URL(path, BOOK).href;
}

function pathIn(address: string): string {
  return address.replace(BOOK, "");
}

function fakeCache(files: Map<string, string>): FileCache {
  return {
    match: async (address) => {
      const text = files.get(address);
      return text === undefined ? undefined : new Response(text);
    },
    put: async (address, answer) => void files.set(address, await answer.text()),
    keys: async () => [...files.keys()].map((url) => ({ url })),
  };
}

function answerOf(served: Served, path: string): Response {
  if (served === "dead") throw new TypeError("no connection");
  const [text, status] = typeof served === "number" ? ["", served] : [served, 200];
  const type = path.endsWith(".html") ? "text/html" : "text/plain";
  const answer = new Response(text, { status, headers: { "content-type": type } });
  return Object.defineProperty(answer, "type", { value: "basic" });
}
