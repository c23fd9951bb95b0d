/** A page's part in keeping the book on the device: it calls the service worker where the web allows one. */

/** `worker` is where the worker lies, from the page; none is given while a book is being written. */
export async function keepOffline(page: Document, worker: string | undefined): Promise<void> {
  const { protocol } = location;
  if (worker === undefined || protocol === "file:" || !("serviceWorker" in navigator)) return;
  linkManifest(page, worker);
  const { serviceWorker } = navigator;
  // A new build that takes over while the page is open begins at once to fetch what only earlier ones keep.
  serviceWorker.addEventListener("controllerchange", () =>
    serviceWorker.controller?.postMessage({ keep: [] }),
  );
  try {
    await serviceWorker.register(worker, { updateViaCache: "none" });
    const { active } = await serviceWorker.ready;
    // The worker came after this page was loaded: it is told what to keep of it.
    active?.postMessage({ keep: [location.href, ...loadedByPage()] });
    offerNotebook(page, (keep) => active?.postMessage({ keep }));
  } catch {
    // Without a worker the book is read as any other page on the web.
  }
}

/** From disk a browser refuses the file and complains, so only the web is told of it. */
function linkManifest(page: Document, worker: string): void {
  const link = page.createElement("link");
  link.rel = "manifest";
  link.href = worker.replace(/[^/]*$/, "manifest.webmanifest");
  page.head.append(link);
}

function loadedByPage(): readonly string[] {
  return performance
    .getEntriesByType("resource")
    .map(({ name }) => name)
    .filter((name) => name.startsWith(`${location.origin}/`) && !name.endsWith(".pdf"));
}

/** The button that keeps every page of one notebook: its own page already links to them all. */
function offerNotebook(page: Document, keep: (addresses: readonly string[]) => void): void {
  const part = page.querySelector<HTMLElement>("[data-offline]");
  const button = part?.querySelector("button");
  const words = part?.querySelector("span");
  if (!part || !button || !words) return;
  const folder = `/${part.dataset.offline}/index.html`;
  const links = [...page.querySelectorAll<HTMLAnchorElement>("main a[href]")].map((a) => a.href);
  const pages = [...new Set(links)].filter((href) => href.endsWith(folder));
  part.hidden = pages.length === 0;
  button.addEventListener("click", () => {
    button.disabled = true;
    keep(pages);
  });
  navigator.serviceWorker.addEventListener("message", ({ data }) => {
    if (!button.disabled || !isTally(data) || data.of !== pages.length) return;
    words.textContent = sayTally(data);
    button.disabled = data.failures === undefined;
    button.hidden = data.failures === 0;
  });
}

interface Tally {
  readonly done: number;
  readonly of: number;
  /** Known at the end alone. */
  readonly failures?: number;
}

function isTally(data: unknown): data is Tally {
  return typeof data === "object" && data !== null && "done" in data && "of" in data;
}

function sayTally({ done, of, failures }: Tally): string {
  if (failures === undefined) return `Keeping ${done} of ${of} pages …`;
  if (failures === 0) return `All ${of} pages open without a connection now.`;
  return `${of - failures} of ${of} pages are kept; the others could not be fetched. Try again.`;
}
