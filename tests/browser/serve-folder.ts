/** A book's folder on a web server of one's own, below a sub-path as many hosts have it. */
import { createReadStream, readFileSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize, sep } from "node:path";

export interface Served {
  /** The address of the folder, with a slash at its end. */
  readonly address: string;
  close(): Promise<void>;
}

const KINDS: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".woff2": "font/woff2",
  ".pdf": "application/pdf",
  ".png": "image/png",
  ".xml": "application/xml",
  ".webmanifest": "application/manifest+json",
};

/**
 * Serves files and nothing else; what is asked for outside the sub-path is not there. A folder that is asked for each
 * time, with the path in question, may change, and while there is none the connection is dead. `missingPage` is sent
 * for what is not there, and pages as `rewrite` gives them.
 */
export async function serveFolder(
  folder: string | ((path: string) => string | undefined),
  subPath = "/deep/down/",
  missingPage?: string,
  rewrite?: (html: string) => string,
): Promise<Served> {
  const server = createServer((request, response) => {
    const now = typeof folder === "string" ? folder : folder(request.url ?? "/");
    if (now === undefined) {
      request.socket.destroy();
      return;
    }
    const file = fileFor(now, subPath, request.url ?? "/");
    if (file === undefined) {
      response.writeHead(404, { "content-type": KINDS[".html"] ?? "" });
      response.end(missingPage === undefined ? "" : readFileSync(join(now, missingPage)));
      return;
    }
    response.writeHead(200, { "content-type": KINDS[extname(file)] ?? "text/plain" });
    if (rewrite && extname(file) === ".html") response.end(rewrite(readFileSync(file, "utf8")));
    else createReadStream(file).pipe(response);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const place = server.address();
  if (typeof place !== "object" || place === null) throw new Error("the server has no port");
  return {
    address: `http://127.0.0.1:${place.port}${subPath}`,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}

function fileFor(folder: string, subPath: string, url: string): string | undefined {
  const path = decodeURIComponent(url.split(/[?#]/)[0] ?? "");
  if (!path.startsWith(subPath)) return undefined;
  const file = normalize(join(folder, path.slice(subPath.length)));
  if (!file.startsWith(folder + sep)) return undefined;
  return statSync(file, { throwIfNoEntry: false })?.isFile() ? file : undefined;
}
