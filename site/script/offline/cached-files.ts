/** The files that a device keeps: found, fetched and forgotten, the builds of one book apart from one another. */
import type { WorkerScope } from "./worker-scope.ts";

export interface KeptFiles {
  /** The kept file, if there is one. */
  find(address: string): Promise<Response | undefined>;
  /** Keeps an answer that came from the network. */
  put(address: string, answer: Response): Promise<void>;
  /** Fetches and keeps; fails where a file cannot be had. */
  fetchAll(addresses: readonly string[]): Promise<void>;
  /** Fetches and keeps what can be had, a page with what it loads; tells how far it is. Gives the number of failures. */
  fetchSome(addresses: readonly string[], tell?: (done: number) => void): Promise<number>;
  /** All addresses that earlier builds of this book keep and this one does not. */
  missing(): Promise<readonly string[]>;
  /** Forgets what earlier builds of this book kept. */
  forgetOthers(): Promise<void>;
}

/** How many files are fetched at a time. */
const AT_ONCE = 6;

/** Opens what this build keeps; nothing is kept at first. */
export function openKeptFiles(scope: WorkerScope): KeptFiles {
  const builds = openBuilds(scope);
  const find = async (address: string) => (await builds.own()).match(fileAddress(address));
  const put = async (address: string, answer: Response) => {
    const cache = await builds.own();
    await cache.put(fileAddress(address), await plainAnswer(answer));
  };
  const fetchOne = async (address: string): Promise<Response> => {
    // Past the browser's own memory, which may hold the build before.
    const answer = await scope.fetch(address, { cache: "no-cache" });
    if (!answer.ok) throw new TypeError(`${address}: ${answer.status}`);
    await put(address, answer.clone());
    return answer;
  };
  const fetchWithParts = async (address: string) => {
    const page = await fetchOne(address);
    for (const part of await partsOf(page, address)) if (!(await find(part))) await fetchOne(part);
  };
  return {
    find,
    put,
    fetchAll: (addresses) => inTurns(addresses, async (address) => void (await fetchOne(address))),
    fetchSome: (addresses, tell = () => {}) => countFailures(addresses, fetchWithParts, tell),
    missing: async () => {
      const own = new Set(await addressesIn(await builds.own()));
      const others = await Promise.all((await builds.others()).map(addressesIn));
      return [...new Set(others.flat())].filter((url) => !own.has(url));
    },
    forgetOthers: builds.forgetOthers,
  };
}

async function addressesIn(cache: Cache): Promise<readonly string[]> {
  return (await cache.keys()).map(({ url }) => url);
}

/** The same answer without the way that led to it: a browser refuses to open a page that it was sent on to. */
async function plainAnswer(answer: Response): Promise<Response> {
  if (!answer.redirected) return answer;
  const { status, statusText, headers } = answer;
  return new Response(await answer.blob(), { status, statusText, headers });
}

/** What a page loads: its pictures, styles and scripts. They are the book's own, so their tags are known. */
async function partsOf(answer: Response, address: string): Promise<readonly string[]> {
  if (!(answer.headers.get("content-type") ?? "").includes("text/html")) return [];
  const html = await answer.text();
  const tags = html.matchAll(
    /<(?:script|img|link rel="stylesheet")[^>]*?\s(?:src|href)="([^"]+)"/g,
  );
  const addresses = [...tags].map(([, part = ""]) => new URL(part, address).href);
  return [...new Set(addresses)].filter((part) => part.startsWith(new URL(address).origin));
}

/** Goes on where one fails; tells after each how many are over. */
async function countFailures(
  addresses: readonly string[],
  act: (address: string) => Promise<void>,
  tell: (done: number) => void,
): Promise<number> {
  let failures = 0;
  let done = 0;
  await inTurns(addresses, async (address) => {
    await act(address).catch(() => {
      failures += 1;
    });
    done += 1;
    tell(done);
  });
  return failures;
}

async function inTurns(
  addresses: readonly string[],
  act: (address: string) => Promise<void>,
): Promise<void> {
  const rest = addresses.values();
  const work = async () => {
    for (let next = rest.next(); !next.done; next = rest.next()) await act(next.value);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
}

export interface KeptBuilds {
  own(): Promise<Cache>;
  others(): Promise<readonly Cache[]>;
  forgetOthers(): Promise<void>;
}

/** Several books may share a host: a cache is named after the book's own folder and its build. */
export function openBuilds({ caches, registration, spanbookBuild }: WorkerScope): KeptBuilds {
  const book = `spanbook ${registration.scope} `;
  const own = book + spanbookBuild.version;
  const others = async () =>
    (await caches.keys()).filter((name) => name.startsWith(book) && name !== own);
  return {
    own: () => caches.open(own),
    others: async () => Promise.all((await others()).map((name) => caches.open(name))),
    forgetOthers: async () => {
      await Promise.all((await others()).map((name) => caches.delete(name)));
    },
  };
}

/** Without question and fragment; a folder stands for its page. */
export function fileAddress(address: string): string {
  const url = new URL(address);
  const path = url.pathname.endsWith("/") ? `${url.pathname}index.html` : url.pathname;
  return url.origin + path;
}
