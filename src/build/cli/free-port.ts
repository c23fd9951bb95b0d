/** Finds a port to serve on, and says in one line why there is none. */
import { createServer } from "node:net";

/** Where a book is served that asks for no port, and as many more as are tried where that one is taken. */
const USUAL = 8080;
const TRIES = 10;

/** The named port, or the first free one of the usual ones. */
export async function freePort(
  named: number | undefined,
): Promise<{ readonly port: number } | { readonly wrong: string }> {
  if (named !== undefined) {
    const refused = await whyRefused(named);
    return refused === undefined ? { port: named } : { wrong: sayRefused(named, refused) };
  }
  for (let port = USUAL; port < USUAL + TRIES; port++) {
    if ((await whyRefused(port)) === undefined) return { port };
  }
  const last = USUAL + TRIES - 1;
  return { wrong: `The ports ${USUAL} to ${last} are taken: choose another with --port=NUMBER.` };
}

/** The system's code for why nobody can listen there; undefined where one can. All addresses, as the server does. */
function whyRefused(port: number): Promise<string | undefined> {
  return new Promise((resolve) => {
    const server = createServer();
    server.once("error", (error) => resolve("code" in error ? String(error.code) : error.message));
    server.listen({ port }, () => server.close(() => resolve(undefined)));
  });
}

function sayRefused(port: number, code: string): string {
  const why = REASONS[code] ?? `cannot be used (${code})`;
  return `Port ${port} ${why}: choose another with --port=NUMBER.`;
}

const REASONS: Readonly<Record<string, string>> = {
  EADDRINUSE: "is taken",
  EACCES: "is not for everybody",
};
