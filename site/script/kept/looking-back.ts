/** Which layouts are really used: counted over all set-ups that are kept here, and over the book's where the keeper wishes. */
import { sayCountingUses, sayUncounted } from "../../../src/issue/words/uses-words.ts";
import { openCatalogue } from "../../../src/view/catalogue.ts";
import type { UsesView } from "../../../src/view/kept/uses-view.ts";
import type { FolderBook, FolderPart } from "../lazy/folder/folder-part.ts";
import {
  type KeptSetup,
  type UsesCounted,
  type UsesPart,
  usesPart,
} from "../lazy/uses/uses-part.ts";
import type { Queue } from "../ui/idle-queue.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";
import type { Draw } from "../ui/show-drawing.ts";

interface Looking {
  readonly part: FolderPart;
  readonly around: FolderBook;
  readonly load: (name: string) => Promise<void>;
  readonly draw: Draw;
  readonly queue: Queue;
}

declare global {
  interface Window {
    /** Set by `setups/texts.js`, which the build writes. */
    readonly spanbookSetups?: Readonly<Record<string, string>>;
  }
}

/** What it gives is to be called whenever something kept may have changed. Nothing is loaded where there is no set-up. */
export function bindLookingBack(page: Document, looking: Looking): () => void {
  const { around, load } = looking;
  const place = partOf(page, "looking-back");
  /** Not there where the book has no set-ups. */
  const withBook = place.querySelector<HTMLInputElement>("[name=with-book]");
  let last = "";
  const show = () => {
    const isWithBook = withBook?.checked === true;
    void setupsFor(looking, isWithBook)
      .then((setups) => {
        if (isWithBook !== (withBook?.checked === true)) return;
        place.hidden = setups.length === 0 && !withBook;
        const key = keyOf(setups, looking);
        if (key === last) return;
        last = key;
        if (setups.length === 0) return showCounted(page, { uncounted: [] }, looking);
        return usesPart(window, load).then((uses) => {
          if (last === key) count(page, { uses, setups }, looking);
        });
      })
      .catch((error: unknown) => {
        console.error(error);
        last = "";
        showWords(page, "The uses could not be counted: a part of this page is missing.");
      });
  };
  withBook?.addEventListener("change", show);
  around.device.subscribe("ticks", show);
  return show;
}

async function setupsFor(
  { part, around, load }: Looking,
  isWithBook: boolean,
): Promise<readonly KeptSetup[]> {
  const kept = part.setups(around);
  if (!isWithBook) return kept;
  await load("../setups/texts.js");
  return [...kept, ...part.bookSetups(around, window.spanbookSetups ?? {})];
}

/** The same for what would be counted alike. */
function keyOf(setups: readonly KeptSetup[], { part, around }: Looking): string {
  const layouts = part.layouts(around.device).map(({ text }) => text);
  return JSON.stringify([setups.map(({ asked, drawn }) => [asked, [...drawn]]), layouts]);
}

/** A little at a time, between what else the page does. */
function count(
  page: Document,
  { uses, setups }: { readonly uses: UsesPart; readonly setups: readonly KeptSetup[] },
  looking: Looking,
): void {
  const { part, around, queue } = looking;
  const own = part.layouts(around.device);
  const steps = uses.count({ setups, own, catalogue: openCatalogue(around.book) });
  queue.put("uses", () => {
    const step = steps.next();
    if (step.done) showCounted(page, step.value, looking, uses);
    else if (setups.length > 1) showWords(page, sayCountingUses(step.value, setups.length));
    return !step.done;
  });
}

const NOTHING = "No set-up is kept here yet: what you set up is counted, month by month.";

function showCounted(
  page: Document,
  { view, uncounted }: UsesCounted,
  { draw }: Pick<Looking, "draw">,
  uses?: UsesPart,
): void {
  const missing = sayUncounted(uncounted);
  showWords(page, [view?.words ?? (missing === "" ? NOTHING : ""), missing].join(" ").trim());
  partOf(page, "uses-shown").hidden = view === undefined;
  if (!view || !uses) return;
  draw.show(partOf(page, "uses-chart"), uses.scene(view.chart));
  partOf(page, "uses-chart-words").textContent = view.chartWords;
  partOf(page, "uses-unused").textContent = view.unused;
  theOne(page, '[data-part="uses-strip"]', HTMLAnchorElement).hash = view.stripHash;
  showTable(theOne(page, '[data-part="uses-table"]', HTMLTableElement), view);
}

/** Words that stand there already are not read out again. */
function showWords(page: Document, words: string): void {
  const place = partOf(page, "uses-words");
  if (place.textContent !== words) place.textContent = words;
}

function showTable(table: HTMLTableElement, { months, rows }: UsesView): void {
  const head = (words: string, scope: "col" | "row") => makeElement("th", { scope }, words);
  const heads = ["Layout", "Uses", "Drawn", ...months].map((words) => head(words, "col"));
  table.replaceChildren(
    makeElement("thead", {}, makeElement("tr", {}, ...heads)),
    makeElement(
      "tbody",
      {},
      ...rows.map(({ title, planned, drawn, cells }) =>
        makeElement(
          "tr",
          {},
          head(title, "row"),
          ...[`${planned}`, `${drawn}`, ...cells].map((words) => makeElement("td", {}, words)),
        ),
      ),
    ),
  );
}
