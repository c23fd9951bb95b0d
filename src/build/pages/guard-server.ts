/** Eleventy's own server behind a check of what it is asked for, on one address instead of all. */
import type { IncomingMessage, ServerResponse } from "node:http";
import type { DevServer, ServeModule } from "@11ty/eleventy";
import type { ServedPages } from "./served-pages.ts";

/** What Eleventy serves with: each server that it opens is guarded, those after a change of its setup, too. */
export function guardServer(serve: ServeModule, { host, pages }: Guard): void {
  const moduleOf = serve.getServerModule.bind(serve);
  serve.getServerModule = async (name) => {
    const { getServer } = await moduleOf(name);
    return { getServer: (...given) => told(guarded(getServer(...given), host), pages) };
  };
}

interface Guard {
  /** The IP address to listen at. */
  readonly host: string;
  readonly pages: ServedPages;
}

/** Stands among the edited files for a page that somebody has opened. */
export const PAGE_ASKED = ".page-asked";

/** Eleventy ends each build with one of these two calls. Open pages are not loaded again for one that only wrote a page. */
function told(server: DevServer, pages: ServedPages): DevServer {
  const reload = server.reload.bind(server);
  const sendError = server.sendError.bind(server);
  server.reload = (event) => {
    pages.release();
    return event.files.every(isAsk) ? Promise.resolve() : reload(event);
  };
  server.sendError = (event) => {
    pages.release();
    return sendError(event);
  };
  return server;
}

/** Not an edit, but a page that is asked for. */
export function isAsk(path: string): boolean {
  return path.endsWith(PAGE_ASKED);
}

/** It would end with what it cannot read, and knows no way to listen at one address. */
function guarded(server: DevServer, host: string): DevServer {
  const http = server.server;
  http.removeAllListeners("request");
  http.on("request", (request, response) => {
    if (!isPageAddress(request.url)) return refuse(response, 400, "This is no address of a page.");
    const answered = server.onRequestHandler(request, response);
    answered.catch((error: unknown) => fail(request, response, error));
  });
  server._serverListen = (port) => http.listen({ port, host });
  // By now it has its socket for reloading; who sends nonsense there is cut off, and that is all.
  http.on("listening", () => {
    server.updateServer.on("connection", (socket) => socket.on("error", () => undefined));
  });
  return server;
}

/** A path that can be read and stays in the book, with slashes and escapes as browsers send them. */
export function isPageAddress(target = ""): boolean {
  if (!/^\/(?!\/)/.test(target)) return false;
  try {
    const path = decodeURIComponent(new URL(target, "http://book").pathname);
    return !path.includes("\0") && !path.split(/[\\/]/).includes("..");
  } catch {
    return false;
  }
}

function fail(request: IncomingMessage, response: ServerResponse, error: unknown): void {
  console.error("%s cannot be shown: %s", request.url, error);
  if (response.headersSent) response.end();
  else refuse(response, 500, "This page cannot be shown.");
}

function refuse(response: ServerResponse, status: number, words: string): void {
  response.writeHead(status, { "content-type": "text/plain; charset=utf-8" }).end(`${words}\n`);
}
