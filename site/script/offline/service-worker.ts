/** The service worker: keeps the book's lists and guide from the first visit on, and every page that is looked at. */
import { openKeptFiles } from "./cached-files.ts";
import { answer, isAnswered } from "./respond.ts";
import type { WorkerScope } from "./worker-scope.ts";

/** Sets the worker up. A build that cannot be fetched whole is not taken over: the one before goes on. */
export function serveOffline(scope: WorkerScope): void {
  const kept = openKeptFiles(scope);
  const root = scope.registration.scope;

  scope.addEventListener("install", (event) => {
    const shell = scope.spanbookBuild.shell.map((path) => root + path);
    event.waitUntil(kept.fetchAll(shell).then(() => scope.skipWaiting()));
  });

  scope.addEventListener("activate", (event) => event.waitUntil(scope.clients.claim()));

  scope.addEventListener("fetch", (event) => {
    const { request } = event;
    if (!isAnswered(request, root)) return;
    event.respondWith(answer({ request, kept, scope, later: (work) => event.waitUntil(work) }));
  });

  scope.addEventListener("message", (event) => {
    const { data, source } = event;
    const wanted = addressesIn(data).filter((address) => address.startsWith(root));
    const tell = (done: number) => source?.postMessage({ done, of: wanted.length });
    const keep = async () => {
      const failures = await kept.fetchSome(wanted, tell);
      source?.postMessage({ done: wanted.length, of: wanted.length, failures });
      // What was looked at in an earlier build is fetched anew: none of it is lost, and none is of another build.
      await kept.fetchSome(await kept.missing());
      await kept.forgetOthers();
    };
    event.waitUntil(keep());
  });
}

/** A page asks for addresses to be kept; anything else is no message of ours. */
function addressesIn(data: unknown): readonly string[] {
  if (typeof data !== "object" || data === null || !("keep" in data)) return [];
  return Array.isArray(data.keep) ? data.keep.filter((one) => typeof one === "string") : [];
}
