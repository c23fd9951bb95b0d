/** What the tests of one file share: a browser, and a web server where they need one. Opened before them, closed after them. */
import type { Browser } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { launchChromium } from "./launch.ts";
import { type Served, serveFolder } from "./serve-folder.ts";

export interface TestBrowser {
  readonly browser: Browser;
  /** Of the served folder, with a slash at its end. */
  readonly address: string;
}

/** To be called once, outside all tests; `folder` is served as `serveFolder` does it. */
export function testBrowser(folder?: string | ((path: string) => string | undefined)): TestBrowser {
  let browser: Browser | undefined;
  let served: Served | undefined;
  beforeAll(async () => {
    browser = await launchChromium();
    served = folder === undefined ? undefined : await serveFolder(folder);
  });
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });
  return {
    get browser() {
      return opened(browser);
    },
    get address() {
      return opened(served).address;
    },
  };
}

function opened<Thing>(thing: Thing | undefined): Thing {
  if (thing === undefined) throw new Error("this is there only while tests run");
  return thing;
}
