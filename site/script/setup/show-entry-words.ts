/** What each entry of the list gives on the notebook, live: its pages, what happens, and what is wrong with it. */
import { isBeyondYears, spansTouching } from "../../../src/calendar/span.ts";
import { EMPTY_BLOCK } from "../../../src/issue/words/setup-words.ts";
import { entryAt } from "../../../src/view/setup/edit-setup.ts";
import { entryWords } from "../../../src/view/setup/entry-words.ts";
import type { SetupState } from "./setup-store.ts";

/** While the pages are worked out, what was said before stays. */
export function showEntryWords(list: HTMLElement, state: SetupState): void {
  const { faults, setup, asked, when } = state;
  for (const item of list.querySelectorAll<HTMLElement>("li[data-slug]")) {
    const { slug: path = "" } = item.dataset;
    const entry = entryAt(asked.setup.pages, path);
    const fault = faults.find(({ at }) => at === path);
    say(item, "fault", fault ? `${fault.sentence} ${fault.hint}` : "");
    if (entry?.kind === "each" && entry.pages.length === 0) {
      say(item, "pages", "");
      say(item, "notes", EMPTY_BLOCK);
    } else if (setup) {
      const words = entryWords(setup, path, when.rule);
      say(item, "pages", words.pages);
      say(item, "notes", words.notes.join(" "));
    } else if (faults.length > 0) {
      say(item, "pages", "");
      say(item, "notes", "");
    }
    const choice = item.querySelector<HTMLElement>(":scope > .borders");
    if (choice && entry) choice.hidden = entry.borders === "both" && !hasBorders(state, path);
  }
}

/** Does a span of the entry lie across an end of the days? */
function hasBorders({ asked, when, question }: SetupState, path: string): boolean {
  const entry = entryAt(asked.setup.pages, path);
  const { dates } = asked.setup;
  const kind =
    entry?.kind === "pattern" && question
      ? question.recipe(entry.pattern).dates?.span
      : entry?.kind === "each"
        ? entry.each
        : undefined;
  if (!kind) return false;
  return spansTouching(kind, dates, when.rule).some((found) => {
    const span = isBeyondYears(found) ? found.span : found;
    return span.from < dates.from || span.to > dates.to;
  });
}

/** Words that stand there already are left alone. */
function say(item: HTMLElement, part: string, words: string): void {
  const place = item.querySelector<HTMLElement>(
    `:scope > [data-entry="${part}"], :scope > .name [data-entry="${part}"]`,
  );
  if (!place || place.textContent === words) return;
  place.textContent = words;
  place.hidden = words === "";
}
