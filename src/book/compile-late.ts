/** How eager the machine's compiler is while a book is built. */
import { setFlagsFromString } from "node:v8";

/**
 * Code that runs for seconds is not worth what V8 spends on its last and slowest compiler, which would take half of
 * a build's processor time from the threads that work. The names of the numbers to raise change with V8.
 */
export function compileLate(): void {
  const isBeforeMaglev = Number.parseInt(process.versions.v8, 10) < 12;
  setFlagsFromString(
    isBeforeMaglev ? "--interrupt-budget=1000000" : "--invocation-count-for-turbofan=20000",
  );
}
