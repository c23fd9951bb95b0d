/** Where the system has Chromium, for tests and for scripts that take pictures or measure. */
import { existsSync } from "node:fs";

/** The same engine without the window's frame and services: a page loads in about half the processor's time. */
export const SHELL = "/usr/bin/chromium-headless-shell";
export const WHOLE = "/usr/bin/chromium";

/** What `CHROMIUM` in the environment names, else what there is. Throws one line where there is none. */
export function chromiumThere() {
  const path = process.env.CHROMIUM ?? [SHELL, WHOLE].find(existsSync);
  if (!path) throw new Error("There is no Chromium: install Debian's chromium-headless-shell.");
  return path;
}
