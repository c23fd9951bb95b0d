/** How a request of a page is answered: by the network where it can, and by what is kept where it cannot. */
import type { KeptFiles } from "./cached-files.ts";
import type { WorkerScope } from "./worker-scope.ts";

/** A connection that says nothing for so long is as good as none, if the file is kept. */
const PATIENCE = 4_000;

/** PDF files are not kept unasked: whoever opened one has it. */
export function isAnswered(request: Request, scope: string): boolean {
  const { method, url, headers } = request;
  return method === "GET" && url.startsWith(scope) && !headers.has("range") && !/\.pdf$/i.test(url);
}

export interface PageRequest {
  readonly request: Request;
  readonly kept: KeptFiles;
  readonly scope: WorkerScope;
  /** Work that goes on when the answer is given. */
  readonly later: (work: Promise<unknown>) => void;
}

/** The newest there is. Pages and what they load are all answered this way, so that builds do not mix. */
export async function answer({ request, kept, scope, later }: PageRequest): Promise<Response> {
  const fresh = scope.fetch(request).then((found) => {
    // A device without room for it still shows the page.
    if (found.ok && found.type === "basic")
      later(kept.put(request.url, found.clone()).catch(() => undefined));
    return found;
  });
  const known = await kept.find(request.url);
  try {
    return await (known ? Promise.race([fresh, lateAnswer(known)]) : fresh);
  } catch (error) {
    if (known) return known;
    if (request.mode === "navigate") return notKept(scope.registration.scope);
    throw error;
  }
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
