/** Processor time of some work beside that of other work: both on the same machine at the same time. */

/** How many times the second work's time the first takes: the least of several turns of each, taken one after another. */
export function timesAs(work: () => void, other: () => void): number {
  const turns = Array.from({ length: 3 }, () => ({ work: timeOf(work), other: timeOf(other) }));
  return Math.min(...turns.map((turn) => turn.work)) / Math.min(...turns.map((turn) => turn.other));
}

/** In microseconds. */
function timeOf(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return user + system;
}
