/** Picked days behind the # of an address, and the calendar where it is another than the book's. */
import { spanText } from "../../calendar/write-span.ts";
import type { AddressIssue } from "../../issue/facts/address-issue.ts";
import type { FieldIssue } from "../../issue/facts/field-issue.ts";
import {
  CALENDAR_FIELD_NAMES,
  type CalendarFieldName,
  calendarTextsOf,
  type DatesChoice,
  readCalendarFields,
  readDatesField,
} from "../fields/span-fields.ts";
import type { AddressEntries, AddressReading } from "./hash-params.ts";

/** The key of each field: the names of the book's `calendar`, in small letters. */
const KEY_OF_FIELD = {
  region: "region",
  language: "language",
  week: "week",
  weekOne: "weekone",
} as const satisfies Readonly<Record<CalendarFieldName, string>>;

export const DATES_ADDRESS_KEYS = ["dates", ...Object.values(KEY_OF_FIELD)] as const;

/** The entries: none of them for no days by the book's own calendar. */
export function datesEntries({ picked, calendar }: DatesChoice): AddressEntries {
  const texts = calendarTextsOf(calendar);
  return [
    ["dates", picked ? spanText(picked) : ""],
    ...CALENDAR_FIELD_NAMES.map((name) => [KEY_OF_FIELD[name], texts[name]] as const),
  ];
}

/** The choice of an address's values; nothing where they name none of its keys. */
export function readDatesEntries(
  values: ReadonlyMap<string, string>,
): AddressReading<DatesChoice | undefined> {
  if (!DATES_ADDRESS_KEYS.some((key) => values.has(key))) return { ok: true, value: undefined };
  const days = readDatesField(values.get("dates") ?? "");
  if (!days.ok) return failed("dates", days.issues[0]);
  const texts = { region: "", language: "", week: "", weekOne: "" };
  for (const name of CALENDAR_FIELD_NAMES) texts[name] = values.get(KEY_OF_FIELD[name]) ?? "";
  const calendar = readCalendarFields(texts);
  if (!calendar.ok) {
    const [issue] = calendar.issues;
    return failed(issue ? KEY_OF_FIELD[issue.field] : "region", issue);
  }
  return {
    ok: true,
    value: { ...(days.value && { picked: days.value }), calendar: calendar.value },
  };
}

function failed(key: string, field: FieldIssue | undefined): AddressReading<never> {
  const issue: AddressIssue = field
    ? { kind: "bad-value", key, field }
    : { kind: "missing-key", key };
  return { ok: false, issue };
}
