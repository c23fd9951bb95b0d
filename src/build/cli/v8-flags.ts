/** How V8 is set while a book is built: for a program that runs for seconds, on few processors, and ends. */
import { setFlagsFromString } from "node:v8";

/** Sets it for all threads of this process. `npm run bench` shows what it saves. */
export function tuneForBuild(): void {
  // What V8 spends on its last and slowest compiler never pays, and takes the processors from the threads that work.
  const isBeforeMaglev = Number.parseInt(process.versions.v8, 10) < 12;
  setFlagsFromString(
    isBeforeMaglev ? "--interrupt-budget=1000000" : "--invocation-count-for-turbofan=20000",
  );
}
