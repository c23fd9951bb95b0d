/** All that a built notebook's page has, for the notebook that is filled in: brought when somebody comes near it. */
import {
  NOTEBOOK_TABLES,
  type NotebookPart,
  notebookPart,
} from "../lazy/notebook/notebook-part.ts";
import type { Queue } from "../ui/idle-queue.ts";
import { partOf, theOne } from "../ui/parts.ts";
import type { FitStore } from "./fit-store.ts";

interface Shows {
  readonly queue: Queue;
  readonly load: (name: string) => Promise<void>;
  readonly say: (words: string) => void;
}

/** Follows the notebook from when the tables come near, or the help for counting is opened. */
export function bindNotebookTables(window: Window, store: FitStore, shows: Shows): void {
  const { document } = window;
  const tables = partOf(document, "notebook-tables");
  const help = theOne(document, ".counting-help:not([data-part])", HTMLElement);
  tables.hidden = false;
  const bring = () =>
    notebookPart(window, shows.load).then(
      (part) => follow(document, store, { part, queue: shows.queue }),
      () =>
        shows.say("The notebook’s numbers could not be loaded: a part of this page is missing."),
    );
  const once = () => {
    near.disconnect();
    help.removeEventListener("toggle", once);
    void bring();
  };
  const near = new IntersectionObserver(
    (entries) => {
      if (entries.some(({ isIntersecting }) => isIntersecting)) once();
    },
    { rootMargin: "500px" },
  );
  near.observe(tables);
  help.addEventListener("toggle", once);
}

function follow(
  page: ParentNode,
  store: FitStore,
  { part, queue }: { readonly part: NotebookPart; readonly queue: Queue },
): void {
  const words = partOf(page, "counting-words");
  let last: unknown;
  store.subscribe(({ notebook, errors }) => {
    partOf(page, "notebook-tables").classList.toggle("stale", errors.notebook.length > 0);
    if (notebook === last) return;
    last = notebook;
    queue.put("notebook tables", () => {
      words.replaceChildren(...part.countingWords(notebook));
      const tables = part.tables(notebook);
      for (const name of NOTEBOOK_TABLES) partOf(page, name).replaceChildren(...tables[name]);
      return false;
    });
  });
}
