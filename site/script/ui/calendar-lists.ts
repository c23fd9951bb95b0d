/** The lists of regions and languages, filled when they are wanted, and the words of what is chosen nowhere. */
import { type CalendarFields, WEEKDAY_WORDS } from "../../../src/calendar/calendar.ts";
import type { WeekRule } from "../../../src/calendar/week.ts";
import type { When } from "../../../src/plan/when.ts";
import type { Choice } from "../../../src/view/fields/form-lists.ts";
import { weekRuleOf } from "../../../src/view/fields/span-fields.ts";
import { weekOneWords } from "../../../src/view/pattern/span-words.ts";
import { makeElement } from "./make-element.ts";
import { partOf, theOne } from "./parts.ts";

/** Codes with what they are called. */
export interface CalendarLists {
  readonly regions: readonly Choice[];
  readonly languages: readonly Choice[];
}

/** Follows what is chosen; the lists are loaded when the part around them is opened first. */
export function bindCalendarLists(
  form: HTMLFormElement,
  book: When,
  load: () => Promise<CalendarLists>,
): (calendar: CalendarFields) => void {
  const around = theOne(form, "details", HTMLDetailsElement);
  const list = (name: string) => theOne(form, `[name="${name}"]`, HTMLSelectElement);
  const [regions, languages, week, weekOne] = [
    list("region"),
    list("language"),
    list("week"),
    list("weekOne"),
  ];
  let now: CalendarFields = {};
  const show = (calendar: CalendarFields) => {
    now = calendar;
    choose(regions, calendar.region);
    choose(languages, calendar.language);
    const { region } = calendar;
    const rule = weekRuleOf(region === undefined ? {} : { region }, book.rule);
    const from = region === undefined ? "as in the book" : "as in the region";
    nameUsual(week, `${from}: ${usualWeekday(week, rule)}`);
    nameUsual(weekOne, `${from}: ${weekOneWords(rule.weekOne)}`);
  };
  let isAsked = false;
  around.addEventListener("toggle", () => {
    if (isAsked || !around.open) return;
    isAsked = true;
    void load().then(
      (lists) => {
        offer(regions, lists.regions);
        offer(languages, lists.languages);
        nameUsual(languages, `as in the book: ${nameIn(lists.languages, book.names.language)}`);
        show(now);
      },
      () => {
        isAsked = false;
        partOf(form, "lists-missing").hidden = false;
      },
    );
  });
  return show;
}

function offer(list: HTMLSelectElement, choices: readonly Choice[]): void {
  const [usual] = list.options;
  const options = choices.map(([value, words]) => makeElement("option", { value }, words));
  list.replaceChildren(...(usual ? [usual] : []), ...options);
}

/** One that is not in the list yet, or goes by another tag there, is put into it. */
function choose(list: HTMLSelectElement, value = ""): void {
  if (![...list.options].some((option) => option.value === value))
    list.append(makeElement("option", { value }, value));
  list.value = value;
}

function nameUsual(list: HTMLSelectElement, words: string): void {
  const [usual] = list.options;
  if (usual && usual.textContent !== words) usual.textContent = words;
}

function usualWeekday(list: HTMLSelectElement, { firstWeekday }: WeekRule): string {
  const word = WEEKDAY_WORDS[firstWeekday - 1];
  const option = [...list.options].find(({ value }) => value === word);
  return option?.textContent ?? "";
}

function nameIn(choices: readonly Choice[], tag: string): string {
  return choices.find(([value]) => value === tag)?.[1] ?? tag;
}
