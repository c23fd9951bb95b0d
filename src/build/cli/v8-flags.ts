/** How V8 is set while a book is built: for a program that runs for seconds, on few processors, and ends. */
import { setFlagsFromString } from "node:v8";

/** So many pages of patterns are a large book. */
const LARGE = 2_000;

/** A large book clears its garbage sooner: 1,000 × 20 pages are built within 500 MB then, for some more work (DEVELOPERS.md, "How fast a book is built"). */
export function tuneForPages(count: number): void {
  if (count >= LARGE) setFlagsFromString("--heap-growing-percent=40");
}

/** Sets it for all threads of this process. `npm run bench` shows what it saves. */
export function tuneForBuild(): void {
  // What V8 spends on its last and slowest compiler never pays, and takes the processors from the threads that work.
  const isBeforeMaglev = Number.parseInt(process.versions.v8, 10) < 12;
  setFlagsFromString(
    isBeforeMaglev ? "--interrupt-budget=1000000" : "--invocation-count-for-turbofan=20000",
  );
}
