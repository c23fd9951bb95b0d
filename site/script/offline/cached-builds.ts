/** The caches of one book on a device: one for each of its builds, apart from those of any other book. */
import type { FileCache, WorkerScope } from "./worker-scope.ts";

export interface CachedBuilds {
  /** Of the build that the worker belongs to. */
  own(): Promise<FileCache>;
  /** Of the other builds that are still there, the newest first. */
  others(): Promise<readonly CachedBuild[]>;
  /** Is a newer build on its way? Then one of the others is being filled, and none is to be touched. */
  isReplaced(): boolean;
  forget(build: CachedBuild): Promise<void>;
}

export interface CachedBuild {
  readonly name: string;
  readonly cache: FileCache;
}

/** Several books may share a host: a cache is named after the book's own folder and its build. */
export function openBuilds({ caches, registration, spanbookBuild }: WorkerScope): CachedBuilds {
  const book = `spanbook ${registration.scope} `;
  const own = book + spanbookBuild.version;
  return {
    own: () => caches.open(own),
    others: async () => {
      const names = (await caches.keys()).filter((name) => name.startsWith(book) && name !== own);
      const open = async (name: string) => ({ name, cache: await caches.open(name) });
      // They are named in the order in which they were made (W3C, Service Workers, `keys()` of a CacheStorage).
      return Promise.all(names.reverse().map(open));
    },
    isReplaced: () => registration.installing !== null || registration.waiting !== null,
    forget: async ({ name }) => void (await caches.delete(name)),
  };
}

/** The addresses of all files that a build keeps. */
export async function addressesIn(cache: FileCache): Promise<readonly string[]> {
  return (await cache.keys()).map(({ url }) => url);
}

/**
 * Is it the book's own? Another book may lie in a folder beside the book's pages, and its worker may not be at work yet.
 */
export function isOwn(
  address: string,
  { registration: { scope }, spanbookBuild }: WorkerScope,
): boolean {
  if (!address.startsWith(scope)) return false;
  const [name = ""] = address.slice(scope.length).split(/[/?#]/);
  return name === "" || spanbookBuild.names.includes(name);
}

/** Without question and fragment; a folder stands for its page. */
export function fileAddress(address: string): string {
  const url = new URL(address);
  const path = url.pathname.endsWith("/") ? `${url.pathname}index.html` : url.pathname;
  return url.origin + path;
}
