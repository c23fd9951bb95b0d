/** How a request of a page is answered: by the network where it can, and by what is kept where it cannot. */
import { isOwn } from "./cached-builds.ts";
import type { KeptFiles } from "./cached-files.ts";
import type { WorkerScope } from "./worker-scope.ts";

/** A connection that says nothing for so long is as good as none, if the file is kept. */
const PATIENCE = 4_000;

/** PDF files are not kept unasked: whoever opened one has it. */
export function isAnswered({ method, url, headers }: Request, scope: WorkerScope): boolean {
  return method === "GET" && isOwn(url, scope) && !headers.has("range") && !/\.pdf$/i.test(url);
}

export interface PageRequest {
  readonly request: Request;
  /** Of the page that asks; empty where a page is what is asked for. */
  readonly clientId: string;
  readonly kept: KeptFiles;
  readonly scope: WorkerScope;
  /** Work that goes on when the answer is given. */
  readonly later: (work: Promise<unknown>) => void;
}

/** The newest there is. Pages and what they load are all answered this way, so that builds do not mix. */
export async function answer(asked: PageRequest): Promise<Response> {
  const { request, kept, scope, later } = asked;
  const fresh = scope.fetch(request).then((found) => {
    // A device without room for it still shows the page.
    if (found.ok && found.type === "basic")
      later(kept.put(request.url, found.clone()).catch(() => undefined));
    return found;
  });
  // It is waited for below, and may fail before.
  fresh.catch(() => undefined);
  const known = await kept.find(request.url, await pageAround(asked));
  try {
    const found = await (known ? Promise.race([fresh, lateAnswer(known)]) : fresh);
    return known && found.status >= SERVER_FAILS ? known : found;
  } catch (error) {
    if (known) return known;
    if (request.mode === "navigate") return notKept(scope.registration.scope);
    throw error;
  }
}

/** From this status on a server says that the fault is its own (RFC 9110, 15.6). */
const SERVER_FAILS = 500;

/** The page that asks for one of its parts. */
async function pageAround({ request, clientId, scope }: PageRequest): Promise<string | undefined> {
  return request.mode === "navigate" ? undefined : (await scope.clients.get(clientId))?.url;
}

function lateAnswer(known: Response): Promise<Response> {
  return new Promise((resolve) => setTimeout(() => resolve(known), PATIENCE));
}

/** A page that was never opened here. */
function notKept(root: string): Response {
  const html = `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Not on this device</title>
<link rel="stylesheet" href="${root}assets/book.css">
<main>
<h1>This page is not on this device yet</h1>
<p>There is no connection, and the page was not opened here before. <a href="${root}index.html">The front page</a> is here, and so is every page that you have looked at.</p>
</main>
</html>`;
  return new Response(html, {
    status: 503,
    headers: { "content-type": "text/html; charset=utf-8" },
  });
}
