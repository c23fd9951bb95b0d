/** The files that a device keeps: found in any build of the book, and fetched for this one. */
import { type CachedBuilds, fileAddress, isOwn, openBuilds } from "./cached-builds.ts";
import { carryOver } from "./carry-over.ts";
import { keepFile, keepWithParts, plainAnswer } from "./fetch-file.ts";
import { inTurns } from "./in-turns.ts";
import type { FileCache, WorkerScope } from "./worker-scope.ts";

export interface KeptFiles {
  /** The kept file, this build's before any other's; but first from the build that the page at `around` is kept in. */
  find(address: string, around?: string): Promise<Response | undefined>;
  /** Keeps an answer that came from the network. */
  put(address: string, answer: Response): Promise<void>;
  /** Fetches and keeps; fails where a file cannot be had. */
  fetchAll(addresses: readonly string[]): Promise<void>;
  /** Fetches and keeps what can be had, a page with what it loads; tells how far it is. Gives the number of failures. */
  fetchSome(addresses: readonly string[], tell?: (done: number) => void): Promise<number>;
  /** Fetches anew what only other builds keep, and forgets each of them once this one has the same pages. */
  carryOver(): Promise<void>;
}

/** Opens what this build keeps; nothing is kept at first. */
export function openKeptFiles(scope: WorkerScope): KeptFiles {
  const builds = openBuilds(scope);
  const put = async (address: string, answer: Response) => {
    const cache = await builds.own();
    await cache.put(fileAddress(address), await plainAnswer(answer));
  };
  const at = { scope, builds, put };
  const fetchOne = (address: string) => keepWithParts(address, at);
  let carrying: Promise<void> | undefined;
  return {
    find: (address, around) => findIn(builds, address, around),
    put,
    fetchAll: (addresses) =>
      inTurns(addresses, async (address) => {
        if ((await keepFile(address, at)) !== "kept") throw new TypeError(`${address}: not had`);
      }),
    fetchSome: async (addresses, tell = () => {}) => {
      let [failures, done] = [0, 0];
      await inTurns(addresses, async (address) => {
        if ((await fetchOne(address)) !== "kept") failures += 1;
        done += 1;
        tell(done);
      });
      return failures;
    },
    // Pages may ask at the same time: it is done once for all of them.
    carryOver: () => {
      carrying ??= carryOver({ builds, fetchOne, isOwn: (address) => isOwn(address, scope) })
        // It is tried again with the next page.
        .catch(() => undefined)
        .finally(() => {
          carrying = undefined;
        });
      return carrying;
    },
  };
}

async function findIn(
  builds: CachedBuilds,
  address: string,
  around: string | undefined,
): Promise<Response | undefined> {
  const caches = [await builds.own(), ...(await builds.others()).map(({ cache }) => cache)];
  const first = around === undefined ? [] : await having(caches, around);
  for (const cache of [...first.slice(0, 1), ...caches]) {
    const found = await cache.match(fileAddress(address));
    if (found) return found;
  }
  return undefined;
}

async function having(
  caches: readonly FileCache[],
  address: string,
): Promise<readonly FileCache[]> {
  const found = await Promise.all(caches.map((cache) => cache.match(fileAddress(address))));
  return caches.filter((_, index) => found[index]);
}
