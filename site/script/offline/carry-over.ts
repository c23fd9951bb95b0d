/** How a new build takes over what earlier ones keep on a device, over any connection, and when those may go. */
import { addressesIn, type CachedBuild, type CachedBuilds } from "./cached-builds.ts";
import type { Outcome } from "./fetch-file.ts";
import { inTurns } from "./in-turns.ts";

interface CarryingOver {
  readonly builds: CachedBuilds;
  readonly fetchOne: (address: string) => Promise<Outcome>;
  readonly isOwn: (address: string) => boolean;
}

/** Another build and the addresses of the book that it keeps. */
interface Other {
  readonly build: CachedBuild;
  readonly addresses: readonly string[];
}

/**
 * What only other builds keep is fetched anew, so that it is of one build with the rest. A build goes once this one has
 * the same pages, and not before: over a bad connection it stays, and the next page that is opened tries again.
 */
export async function carryOver({ builds, fetchOne, isOwn }: CarryingOver): Promise<void> {
  if (builds.isReplaced()) return;
  const others = await Promise.all(
    (await builds.others()).map(async (build): Promise<Other> => {
      return { build, addresses: (await addressesIn(build.cache)).filter(isOwn) };
    }),
  );
  const held = async () => new Set(await addressesIn(await builds.own()));
  const before = await held();
  const all = new Set(others.flatMap(({ addresses }) => addresses));
  const gone = new Set<string>();
  await inTurns(
    [...all].filter((address) => !before.has(address)),
    async (address) => {
      if ((await fetchOne(address)) === "gone") gone.add(address);
    },
  );
  if (builds.isReplaced()) return;
  const now = await held();
  const stays = lastingPages(others);
  for (const { build, addresses } of others) {
    const isSettled = (one: string) => now.has(one) || (gone.has(one) && !stays.has(one));
    if (addresses.every(isSettled)) await builds.forget(build);
  }
}

/**
 * A page that the server says is gone may only be on its way up, so the last build's pages stay until there is another
 * build; a page that two builds in turn have no more is gone.
 */
function lastingPages([last]: readonly Other[]): ReadonlySet<string> {
  return new Set(last?.addresses.filter((address) => address.endsWith(".html")));
}
