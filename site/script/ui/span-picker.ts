/** The form that picks the days of a dated pattern: typed, or a span on or back, and how weeks are counted and days are called. */
import type { Day } from "../../../src/calendar/day.ts";
import {
  type DayRange,
  isBeyondYears,
  type Span,
  type SpanKind,
  spanBeside,
  spanHolding,
} from "../../../src/calendar/span.ts";
import { spanText } from "../../../src/calendar/write-span.ts";
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import { asSentence } from "../../../src/issue/words/say-count.ts";
import type { When } from "../../../src/plan/when.ts";
import type { FieldReading } from "../../../src/view/fields/read-notebook-fields.ts";
import {
  CALENDAR_FIELD_NAMES,
  calendarTextsOf,
  type DatesChoice,
  pickedSpan,
  readCalendarFields,
  readDatesField,
  weekRuleOf,
  withoutUsual,
} from "../../../src/view/fields/span-fields.ts";
import { spanFacts, spanTitle } from "../../../src/view/pattern/span-words.ts";
import { bindCalendarLists, type CalendarLists } from "./calendar-lists.ts";
import { fieldOf, fillForm, readForm, showErrors } from "./form.ts";
import { onPress, partOf, theOne } from "./parts.ts";

/** What the form picks for, and what is picked. */
export interface PickedDates {
  /** Of the pattern that is shown; left out where it has no days. */
  readonly kind?: SpanKind | undefined;
  readonly choice: DatesChoice;
  readonly when: When;
  /** Days that need not be one span, as a set-up's, in place of the span. */
  readonly range?: PickedRange;
}

/** They are never none. */
interface PickedRange {
  readonly days: DayRange;
  readonly words: string;
  /** So many times later; nothing beyond the calendar. */
  readonly beside: (by: number) => DayRange | undefined;
}

interface Picking {
  /** How the book counts weeks and calls its days. */
  readonly book: When;
  /** By the device's clock. */
  readonly today: () => Day;
  readonly loadLists: () => Promise<CalendarLists>;
  readonly pick: (choice: DatesChoice) => void;
  /** What is wrong with days that are all right by themselves. */
  readonly check?: (choice: DatesChoice) => readonly FieldIssue[];
  readonly setErrors: (issues: readonly FieldIssue[]) => void;
}

/** Enhances the form, and gives a function that shows in it what is picked now. */
export function bindSpanPicker(
  form: HTMLFormElement,
  { book, today, loadLists, pick, check = () => [], setErrors }: Picking,
): (picked: PickedDates) => void {
  const field = theOne(form, '[name="dates"]', HTMLInputElement);
  let now: PickedDates = { choice: { calendar: {} }, when: book };
  /** What the form said last; anything else came from elsewhere and is put into it. */
  let own: DatesChoice | undefined;
  const showLists = bindCalendarLists(form, book, loadLists);
  const pickSpan = (span: DayRange | undefined) =>
    pick({ ...(span && { picked: span }), calendar: now.choice.calendar });
  const readFields = () => {
    const reading = readPicked(form, now.kind, book);
    const issues = reading.ok ? check(reading.value) : reading.issues;
    showErrors(form, issues);
    if (!reading.ok || issues.length > 0) return setErrors(issues);
    own = reading.value;
    pick(own);
  };
  const move = (by: number) => {
    const beside = besideShown(now, by);
    if (beside) pickSpan(beside);
  };
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("input", readFields);
  field.addEventListener("change", () => {
    if (readDatesField(field.value).ok) field.value = shownText(now);
  });
  onPress(form, "dates-before", () => move(-1));
  onPress(form, "dates-after", () => move(1));
  onPress(form, "dates-today", () => {
    const span = now.kind && spanHolding(now.kind, today(), now.when.rule);
    if (span && !isBeyondYears(span)) pickSpan(span);
  });
  onPress(form, "dates-none", () => {
    pickSpan(undefined);
    // The button that had the focus is hidden then.
    field.focus();
  });
  return (picked) => {
    const isNew = picked.choice !== own || picked.kind !== now.kind;
    now = picked;
    form.hidden = picked.kind === undefined;
    if (isNew) {
      own = picked.choice;
      fillForm(form, { dates: shownText(now), ...calendarTextsOf(own.calendar) });
      showErrors(form, []);
    }
    showLists(picked.choice.calendar);
    showWords(form, now);
  };
}

/** What the form says, or every problem with its field. */
function readPicked(
  form: HTMLFormElement,
  kind: SpanKind | undefined,
  book: When,
): FieldReading<DatesChoice, string> {
  const days = readDatesField(fieldOf(form, "dates").value);
  const calendar = readCalendarFields(readForm(form, CALENDAR_FIELD_NAMES));
  if (!days.ok) return days;
  if (!calendar.ok) return calendar;
  const choice: DatesChoice = {
    ...(days.value && { picked: days.value }),
    calendar: withoutUsual(calendar.value, book),
  };
  const span = kind && pickedSpan(kind, choice, weekRuleOf(choice.calendar, book.rule));
  return isBeyondYears(span)
    ? { ok: false, issues: [{ field: "dates", kind: "beyond-years" }] }
    : { ok: true, value: choice };
}

/** The span so many later that is still in the calendar. */
function besideShown(
  { when: { span, rule }, range }: PickedDates,
  by: number,
): DayRange | undefined {
  if (range) return range.beside(by);
  const beside = span && spanBeside(span, by, rule);
  return beside && !isBeyondYears(beside) ? beside : undefined;
}

function shownText({ when: { span }, range }: PickedDates): string {
  const days = range?.days ?? span;
  return days ? spanText(days) : "";
}

const KIND_WORDS: Readonly<Record<SpanKind, readonly [example: string, today: string]>> = {
  day: ["2027-03-05", "Today"],
  week: ["2027-W09", "This week"],
  month: ["2027-05", "This month"],
  quarter: ["2027-04/2027-06", "This quarter"],
  year: ["2027", "This year"],
};

/** Labels and buttons go by the pattern's kind of days; the words below say which days are shown. */
function showWords(form: HTMLFormElement, picked: PickedDates): void {
  const { kind, when, range } = picked;
  if (!kind) return;
  const [example, today] = KIND_WORDS[kind];
  partOf(form, "dates-label").textContent = range ? "Dates" : asSentence(kind);
  theOne(form, '[name="dates"]', HTMLInputElement).placeholder = `such as ${example}`;
  theOne(form, '[data-do="dates-today"]', HTMLElement).textContent = today;
  for (const [doing, part, words, by] of BESIDE) {
    const button = theOne(form, `[data-do="${doing}"]`, HTMLElement);
    button.title = `${words} ${kind}`;
    partOf(button, part).textContent = `${words} ${kind}`;
    button.hidden = !when.span && !range;
    button.setAttribute("aria-disabled", String(besideShown(picked, by) === undefined));
  }
  theOne(form, '[data-do="dates-none"]', HTMLElement).hidden = !when.span;
  const words = partOf(form, "dates-words");
  const said = range?.words ?? (when.span ? spanSentence(when.span, when) : NOTHING_PICKED);
  if (words.textContent !== said) words.textContent = said;
}

const BESIDE = [
  ["dates-before", "before-words", "Previous", -1],
  ["dates-after", "after-words", "Next", 1],
] as const;

const NOTHING_PICKED = "No dates yet: drawn with room for the longest.";

function spanSentence(span: Span, { rule }: When): string {
  const facts = spanFacts(span, rule);
  return `${asSentence(spanTitle(span, rule))}${facts === "" ? "" : `: ${facts}`}`;
}
