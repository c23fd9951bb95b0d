/** Counts the lines of a lined page, or says why it does not. Across such a page there is nothing to count. */
import type { FoundRuling } from "./find-ruling.ts";
import type { SummedGrey } from "./grey.ts";
import { growLattice, type Node } from "./grow-lattice.ts";
import { pageOf, rowsOf } from "./lined-rows.ts";
import { linesDoubt } from "./lines-doubt.ts";
import { noFainter } from "./look.ts";
import type { PhotoCount } from "./photo-count.ts";

/** A line is at least so strong, as a part of the one that counting begins with. */
const LEAST_STRENGTH = 0.35;

export function countLines(grey: SummedGrey, { look, seeds }: FoundRuling): PhotoCount {
  let nodes: readonly Node[] = [];
  for (const seed of seeds) {
    // Without a hop: beyond the blank margin the grain of a table may look like lines.
    const grown = growLattice(seed, noFainter(look, LEAST_STRENGTH * seed.spot.strength), 1);
    if (grown.length > nodes.length) nodes = grown;
  }
  const counted = rowsOf(nodes);
  const page = pageOf(counted);
  const doubt = linesDoubt({ grey, look }, counted, page);
  return doubt ? { ok: false, doubt, found: page.lines.flat() } : { ok: true, of: "lines", page };
}
