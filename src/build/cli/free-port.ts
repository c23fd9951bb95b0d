/** Finds a port to serve on, and says in one line why there is none. */
import { createServer } from "node:net";

/** Where a book is served that asks for no port, and as many more as are tried where that one is taken. */
const USUAL = 8080;
const TRIES = 10;

/** The named port of an address, or the first free one of the usual ones. */
export async function freePort(
  named: number | undefined,
  host: string,
): Promise<{ readonly port: number } | { readonly wrong: string }> {
  if (named !== undefined) {
    const refused = await whyRefused(named, host);
    return refused === undefined ? { port: named } : { wrong: sayRefused(named, host, refused) };
  }
  for (let port = USUAL; port < USUAL + TRIES; port++) {
    const refused = await whyRefused(port, host);
    if (refused === undefined) return { port };
    if (refused === NOT_OURS) return { wrong: sayRefused(port, host, refused) };
  }
  const last = USUAL + TRIES - 1;
  return { wrong: `The ports ${USUAL} to ${last} are taken: choose another with --port=NUMBER.` };
}

/** Both lie behind the name `localhost`: where another program listens at the second, a browser may go there. */
export const LOOPBACK = "127.0.0.1";
const OTHER_LOOPBACK = "::1";

/** The system's code for an address that is not this computer's. */
const NOT_OURS = "EADDRNOTAVAIL";

/** The system's code for why nobody can listen there; undefined where one can. */
async function whyRefused(port: number, host: string): Promise<string | undefined> {
  const refused = await whyNotListen(port, host);
  if (refused !== undefined || host !== LOOPBACK) return refused;
  const other = await whyNotListen(port, OTHER_LOOPBACK);
  return other === "EADDRINUSE" ? other : undefined;
}

function whyNotListen(port: number, host: string): Promise<string | undefined> {
  return new Promise((resolve) => {
    const server = createServer();
    server.once("error", (error) => resolve("code" in error ? String(error.code) : error.message));
    server.listen({ port, host }, () => server.close(() => resolve(undefined)));
  });
}

function sayRefused(port: number, host: string, code: string): string {
  if (code === NOT_OURS) {
    return `${host} is no address of this computer: leave --host out, or take 0.0.0.0 for all of its addresses.`;
  }
  const why = REASONS[code] ?? `cannot be used (${code})`;
  return `Port ${port} ${why}: choose another with --port=NUMBER.`;
}

const REASONS: Readonly<Record<string, string>> = {
  EADDRINUSE: "is taken",
  EACCES: "is not for everybody",
};
