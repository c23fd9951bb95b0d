/** The service worker: keeps the book's lists and guide from the first visit on, and every page that is looked at. */
import { isOwn } from "./cached-builds.ts";
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
    const { request, clientId } = event;
    if (!isAnswered(request, scope)) return;
    const later = (work: Promise<unknown>) => event.waitUntil(work);
    event.respondWith(answer({ request, clientId, kept, scope, later }));
  });

  scope.addEventListener("message", (event) => {
    const { data, source } = event;
    const wanted = addressesIn(data).filter((address) => isOwn(address, scope));
    const tell = (done: number) => source?.postMessage({ done, of: wanted.length });
    const keep = async () => {
      const failures = await kept.fetchSome(wanted, tell);
      source?.postMessage({ done: wanted.length, of: wanted.length, failures });
      await kept.carryOver();
    };
    event.waitUntil(keep());
  });
}

/** A page asks for addresses to be kept; anything else is no message of ours. */
function addressesIn(data: unknown): readonly string[] {
  if (typeof data !== "object" || data === null || !("keep" in data)) return [];
  return Array.isArray(data.keep) ? data.keep.filter((one) => typeof one === "string") : [];
}
