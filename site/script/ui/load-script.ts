/** Scripts that are only loaded when they are needed; classic ones, since a page on disk may load no modules. */

/** Loads a script once, beside the page's own; rejects where it cannot be loaded, and may then be tried again. */
export function scriptLoader(own: string): (name: string) => Promise<void> {
  const loading = new Map<string, Promise<void>>();
  return (name) => {
    const known = loading.get(name);
    if (known) return known;
    const started = loadScript(new URL(name, own).href);
    loading.set(name, started);
    started.catch(() => loading.delete(name));
    return started;
  };
}

function loadScript(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address;
    script.addEventListener("load", () => resolve());
    script.addEventListener("error", () => {
      script.remove();
      reject(new Error(`${address} could not be loaded`));
    });
    document.head.append(script);
  });
}

/** The address of the script that is running now; only while it is first run. */
export function ownAddress(): string {
  const running = document.currentScript;
  return running instanceof HTMLScriptElement ? running.src : document.baseURI;
}
