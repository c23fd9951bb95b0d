/** Asks the book's service worker to keep the parts that a page loads later on, so that they are there without a network. */

/** So long after the page is there, so that what is looked at comes first. */
const REST_MS = 2_000;

/** `own` is the address that the parts lie beside. Where there is no worker, or data is to be saved, nothing is asked. */
export function keepParts(window: Window, own: string, names: readonly string[]): void {
  const { navigator, location } = window;
  if (location.protocol === "file:" || !("serviceWorker" in navigator)) return;
  if (savesData(navigator)) return;
  const keep = names.map((name) => new URL(name, own).href);
  setTimeout(() => {
    void navigator.serviceWorker.ready.then(({ active }) => active?.postMessage({ keep }));
  }, REST_MS);
}

/** Did the reader ask for as little data as can be (the Network Information API's Save-Data)? */
function savesData(navigator: Navigator): boolean {
  const connection: unknown = Reflect.get(navigator, "connection");
  return typeof connection === "object" && connection !== null
    ? Reflect.get(connection, "saveData") === true
    : false;
}
