/** What this process took so far, as the last line that it prints. */

/** Wall and processor time in milliseconds since the process began, and its peak memory in mebibytes. */
export function tellCost() {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  const wall = performance.now();
  const processor = (userCPUTime + systemCPUTime) / 1000;
  console.log(JSON.stringify({ wall, processor, memory: maxRSS / 1024 }));
}
