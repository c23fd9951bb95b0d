/** Where the tests' browser comes from: the system's Chromium, started with flags that suit a container. */
import { existsSync } from "node:fs";
import { type Browser, type BrowserServer, chromium } from "playwright-core";
import { SHELL, WHOLE } from "../setup/chromium-there.mjs";
import { needDebian } from "../setup/need-debian.ts";

/** With letters as wide as those of most readers' devices: a bare system has only wider ones. */
const PACKAGES = ["chromium-headless-shell", "fonts-liberation"];

const FLAGS = [
  "--no-sandbox",
  "--disable-dev-shm-usage",
  "--disable-gpu",
  // It knows of no connection, and would fetch pictures from as far below as on the slowest; this is 4G's distance.
  "--blink-settings=lazyLoadingImageMarginPxUnknown=1250",
  "--hide-scrollbars",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Starts Chromium without a window; the caller closes it. Throws one line where there is none to be had. */
export async function launchChromium(): Promise<Browser> {
  return await chromium.launch({ executablePath: chromiumPath(), args: FLAGS });
}

/** The same for several callers, in whatever process: each connects to it. */
export async function launchBrowserServer(): Promise<BrowserServer> {
  return await chromium.launchServer({ executablePath: chromiumPath(), args: FLAGS });
}

/** The executable: as `CHROMIUM` in the environment says, else the system's, installed where it may be. */
function chromiumPath(): string {
  const named = process.env.CHROMIUM;
  if (named) {
    if (!existsSync(named)) throw new Error(`CHROMIUM names ${named}, which is not there.`);
    return named;
  }
  if (existsSync(SHELL)) return SHELL;
  try {
    needDebian(PACKAGES);
    return SHELL;
  } catch (error) {
    if (existsSync(WHOLE)) return WHOLE;
    throw error;
  }
}
