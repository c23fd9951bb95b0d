/** What a process took so far, and what a piece of work took of it. */

/** Wall and processor time in milliseconds since the process began, and its peak memory in mebibytes, as the last line that it prints. */
export function tellCost() {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  const wall = performance.now();
  const processor = (userCPUTime + systemCPUTime) / 1000;
  console.log(JSON.stringify({ wall, processor, memory: maxRSS / 1024 }));
}

/** Does some work; its wall and processor time in milliseconds, all threads of the process together. */
export async function measured(work) {
  const [start, used] = [performance.now(), process.cpuUsage()];
  await work();
  const { user, system } = process.cpuUsage(used);
  return { wall: performance.now() - start, processor: (user + system) / 1000 };
}

/** Tells how much more work and time the turns without a device took than those with it, pair by pair. */
export function tellPairs({ with: kept, without }) {
  for (const [name, title] of [
    ["processor", "work"],
    ["wall", "wall"],
    ["memory", "peak memory"],
  ]) {
    if (kept[0][name] === undefined) continue;
    const ratios = kept.map((cost, index) => without[index][name] / cost[name]);
    ratios.sort((one, other) => one - other);
    const middle = ratios[Math.floor(ratios.length / 2)];
    const [least, most] = [ratios[0], ratios.at(-1)].map((ratio) => ratio.toFixed(2));
    const usual = kept.map((cost) => cost[name]).sort((one, other) => one - other);
    const unit = name === "memory" ? "MiB" : "ms";
    console.log(
      `${title} without it: × ${middle.toFixed(2)} (${least} to ${most}) of ${usual[Math.floor(usual.length / 2)].toFixed(0)} ${unit}`,
    );
  }
}
