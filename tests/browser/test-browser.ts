/** What the tests of one file share: a connection to the browser, a web server where they need one, and a way to look at a page. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import {
  type Browser,
  type BrowserContextOptions,
  chromium,
  type Download,
  type Page,
} from "playwright-core";
import { afterAll, beforeAll, expect, inject } from "vitest";
import { IS_SWEEP } from "../sweep/sweep-size.ts";
import { type Served, serveFolder } from "./serve-folder.ts";
import { type WatchedPage, watchedPage } from "./watched-page.ts";

export interface TestBrowser {
  readonly browser: Browser;
  /** Of the served folder, with a slash at its end. */
  readonly address: string;
  /** Opens a page in a browser that has been nowhere, looks at it, and closes it; nothing may go wrong on it meanwhile. */
  onPage(address: string, options: BrowserContextOptions, look: Look): Promise<void>;
}

type Look = (page: Page) => Promise<void>;

/** To be called once, outside all tests; `folder` is served as `serveFolder` does it. */
export function openTestBrowser(
  folder?: string | ((path: string) => string | undefined),
): TestBrowser {
  let browser: Browser | undefined;
  let served: Served | undefined;
  beforeAll(async () => {
    browser = await chromium.connect(inject("browser"));
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
    onPage: pageLooker(() => opened(browser)),
  };
}

/**
 * Looks at pages, each as if the browser had been nowhere. A window costs more than most of what is looked at, so the
 * next look of the same options has the same one, with nothing left in it; after a failure it has a new one.
 */
function pageLooker(browser: () => Browser): TestBrowser["onPage"] {
  const free = new Map<string, WatchedPage>();
  return async (address, options, look) => {
    const key = JSON.stringify(options);
    const watched = free.get(key) ?? (await watchedPage(browser(), options));
    free.delete(key);
    const { page, complaints } = watched;
    try {
      await page.goto(address);
      await look(page);
      expect(complaints).toEqual([]);
      await leaveNothing(page);
    } catch (error) {
      await watched.close();
      throw error;
    }
    free.set(key, watched);
  };
}

async function leaveNothing(page: Page): Promise<void> {
  await page.evaluate(() => {
    localStorage.clear();
    sessionStorage.clear();
  });
  await page.emulateMedia({ media: null });
  await page.goto("about:blank");
}

/** The folder of the demo book, or of the one with a few layouts on more notebooks where that alone has the file. */
export function bookWith(file: string): string {
  const [book, few] = [inject("book"), inject("few")];
  return !existsSync(join(book, file)) && existsSync(join(few, file)) ? few : book;
}

/** The other way round: the one with a few layouts, save in a sweep or where it has no such file. */
export function fewWith(file: string): string {
  const few = inject("few");
  return !IS_SWEEP && existsSync(join(few, file)) ? few : inject("book");
}

/** The address on disk of a page of these, or of another book; what stands behind # stays. */
export function onDisk(path: string, book?: string): string {
  const [file = "", ...hash] = path.split("#");
  return [pathToFileURL(join(book ?? bookWith(file), file)).href, ...hash].join("#");
}

/** The bytes of a file that a page hands over; the browser may run in another process, so there is no path to read. */
export async function downloaded(download: Download): Promise<Buffer> {
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(Buffer.from(chunk));
  return Buffer.concat(chunks);
}

function opened<Thing>(thing: Thing | undefined): Thing {
  if (thing === undefined) throw new Error("this is there only while tests run");
  return thing;
}
