/** Fetches one file of the book to be kept, past the browser's own memory. */
import { type CachedBuilds, fileAddress, isOwn } from "./cached-builds.ts";
import type { WorkerScope } from "./worker-scope.ts";

/** What became of a file that was to be kept: the server has it no more, or the connection or the device failed. */
export type Outcome = "kept" | "gone" | "failed";

export interface Fetching {
  readonly scope: WorkerScope;
  readonly builds: CachedBuilds;
  readonly put: (address: string, answer: Response) => Promise<void>;
}

/** Keeps one file, once what is done before it with its answer went well. */
export async function keepFile(
  address: string,
  { scope, put }: Fetching,
  before: (answer: Response) => Promise<boolean> = async () => true,
): Promise<Outcome> {
  try {
    // Past the browser's own memory, which may hold the build before.
    const answer = await scope.fetch(address, { cache: "no-cache" });
    if (answer.status === 404 || answer.status === 410) return "gone";
    if (!answer.ok || !(await before(answer.clone()))) return "failed";
    await put(address, answer);
    return "kept";
  } catch {
    return "failed";
  }
}

/** A page is kept after what it loads, so that none is there by half. What it loads and is nowhere is not waited for. */
export function keepWithParts(address: string, at: Fetching): Promise<Outcome> {
  return keepFile(address, at, async (page) => {
    const own = await at.builds.own();
    for (const part of await partsOf(page, address)) {
      if (!isOwn(part, at.scope) || (await own.match(fileAddress(part)))) continue;
      if ((await keepFile(part, at)) === "failed") return false;
    }
    return true;
  });
}

/** The same answer without the way that led to it: a browser refuses to open a page that it was sent on to. */
export async function plainAnswer(answer: Response): Promise<Response> {
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
  return [...new Set(addresses)];
}
