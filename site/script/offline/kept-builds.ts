/** What the device keeps of this build, and of the builds of the same book before it. */
import type { WorkerScope } from "./worker-scope.ts";

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
