/** A page whose every complaint is noted: errors, messages, and files that did not come. */
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";

export interface WatchedPage {
  readonly page: Page;
  /** What went wrong so far, a line each; a policy that was broken is told as a message. */
  readonly complaints: string[];
  close(): Promise<void>;
}

/**
 * A browser that has been nowhere before. At each first visit a service worker fetches what may be wanted later, which is
 * a fifth of all the work that looking at a page makes: so there is one where `serviceWorkers` is "allow", and else the
 * browser knows of none.
 */
export async function newDevice(
  browser: Browser,
  { serviceWorkers = "block", ...options }: BrowserContextOptions = {},
): Promise<BrowserContext> {
  const context = await browser.newContext(options);
  if (serviceWorkers === "block") {
    await context.addInitScript(() => {
      Reflect.deleteProperty(Navigator.prototype, "serviceWorker");
    });
  }
  return context;
}

/** A page on such a device. */
export async function watchedPage(
  browser: Browser,
  options: BrowserContextOptions = {},
): Promise<WatchedPage> {
  const context = await newDevice(browser, options);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(`error: ${error.message}`));
  page.on("requestfailed", (request) => {
    // A page that is left while something still loads has not failed.
    const { errorText } = request.failure() ?? { errorText: "" };
    if (errorText !== "net::ERR_ABORTED") complaints.push(`${errorText}: ${request.url()}`);
  });
  page.on("response", (response) => {
    if (response.status() >= 400) complaints.push(`${response.status()}: ${response.url()}`);
  });
  // A browser need not tell of a refusal that a script has caught; another one will.
  await page.addInitScript(() => {
    document.addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI }) => {
      console.error(`refused by ${violatedDirective}: ${blockedURI}`);
    });
  });
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(`said: ${message.text()}`);
  });
  return { page, complaints, close: () => context.close() };
}
