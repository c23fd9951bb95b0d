/** Calendar files: as programs write them, with slips, and of odd lines. */
import fc from "fast-check";
import { BERLIN } from "../events/written.ts";
import { chosenFrom } from "./choices.ts";
import { edited } from "./edited-text.ts";

const NAMES = [
  "DTSTART",
  "DTEND",
  "DURATION",
  "RRULE",
  "RDATE",
  "EXDATE",
  "RECURRENCE-ID",
  "SUMMARY",
  "STATUS",
  "UID",
];
const VALUES = [
  "20270305",
  "20270305T093000",
  "20270305T093000Z",
  "99991231T235959",
  "00010101",
  "20270230",
  "-20270305",
  "",
  "P1D",
  "PT99999999999S",
  "P999999999W",
  "FREQ=SECONDLY",
  "FREQ=MINUTELY;COUNT=999999999",
  "FREQ=DAILY;INTERVAL=999999999",
  "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30",
  "FREQ=SECONDLY;BYMONTH=2;BYMONTHDAY=30",
  "FREQ=MONTHLY;BYSETPOS=366,-366,0",
  "FREQ=YEARLY;BYWEEKNO=53;BYDAY=MO;BYSETPOS=-1",
  "FREQ=DAILY;UNTIL=99991231T235959Z",
  "FREQ=WEEKLY;BYDAY=99XX",
  "FREQ=HOURLY;BYHOUR=1,2,3,4,5;BYMINUTE=1;BYSECOND=60",
  "FREQ=;;;==;BYDAY",
  "<img src=x onerror=alert(1)>",
  "\u0000\u202e\u0007",
  "__proto__",
  "constructor",
  "20270305/P1D",
  "20270305,20270306,,,",
  ";:;:;:",
  '"',
  "CANCELLED",
];
const PARAMETERS = [
  "",
  ";VALUE=DATE",
  ";VALUE=PERIOD",
  ";TZID=Nowhere",
  ';TZID="a:b"',
  ";VALUE=__proto__",
  ";X",
  ";=",
  ";TZID=a,b;TZID=c",
];

const oddLine = fc
  .tuple(
    fc.constantFrom(...NAMES),
    fc.constantFrom(...PARAMETERS),
    fc.oneof(fc.constantFrom(...VALUES), fc.string({ maxLength: 40 })),
  )
  .map(([name, parameters, value]) => `${name}${parameters}:${value}`);
const noise = fc.oneof(
  fc.constantFrom(
    "BEGIN:VEVENT",
    "END:VEVENT",
    "BEGIN:VALARM",
    "END:VCALENDAR",
    "BEGIN:VTIMEZONE",
    "TZID:Nowhere",
    "BEGIN:STANDARD",
    " folded",
    "\tfolded",
    "no colon",
    "",
  ),
  fc.string({ maxLength: 60, unit: "binary" }),
);

/** Events as programs write them. */
const EVENTS = [
  ["DTSTART;VALUE=DATE:20270305", "SUMMARY:Seed swap"],
  ["DTSTART:20270305T093000Z", "DTEND:20270307T100000Z", "SUMMARY:Open days", "UID:a"],
  ["DTSTART;TZID=Europe/Berlin:20270101T090000", "RRULE:FREQ=WEEKLY;BYDAY=MO,TH", "UID:b"],
  ["DTSTART;VALUE=DATE:20200229", "RRULE:FREQ=YEARLY", "SUMMARY:Leap"],
  ["DTSTART:20270101T080000", "RRULE:FREQ=MONTHLY;BYDAY=-1SU;COUNT=9", "EXDATE:20270228T080000"],
  ["DTSTART;VALUE=DATE:20270301", "DURATION:P3D", "RDATE;VALUE=DATE:20270401,20270501"],
  ["DTSTART:20270308T090000", "RECURRENCE-ID;TZID=Europe/Berlin:20270304T090000", "UID:b"],
  ["DTSTART:20270305T093000", "DTEND:20270304T093000", "SUMMARY:Backwards"],
  ["DTSTART;TZID=Nowhere:20270301T090000", "RRULE:FREQ=DAILY;UNTIL=20270310T090000Z"],
  ["DTSTART:20270311T090000", "RECURRENCE-ID;RANGE=THISANDFUTURE:20270311T090000", "UID:b"],
  ["DTSTART:19970902T090000", "RRULE:FREQ=DAILY;INTERVAL=2", "SUMMARY:Water"],
] as const;

const END_OF_LINE = fc.constantFrom("\r\n", "\n", "\r");

function fileOf(lines: readonly string[], end: string): string {
  return ["BEGIN:VCALENDAR", "VERSION:2.0", ...lines, "END:VCALENDAR", ""].join(end);
}

export function wildCalendar(): fc.Arbitrary<string> {
  const events = fc
    .array(fc.constantFrom(...EVENTS), { minLength: 1, maxLength: 5 })
    .map((all) => [...BERLIN, ...all.flatMap((one) => ["BEGIN:VEVENT", ...one, "END:VEVENT"])]);
  const written = fc.tuple(events, END_OF_LINE).map(([lines, end]) => fileOf(lines, end));
  const slipped = chosenFrom(written, (text, choices) =>
    edited(text, { choices, words: [...NAMES, ...VALUES, ...PARAMETERS] }),
  );
  const odd = fc.array(
    fc.oneof({ weight: 5, arbitrary: oddLine }, { weight: 1, arbitrary: noise }),
    { maxLength: 60 },
  );
  const oddFile = fc.tuple(odd, END_OF_LINE).map(([lines, end]) => {
    const start = ["BEGIN:VEVENT", "DTSTART:20270301T090000"];
    return fileOf([...start, ...lines, "END:VEVENT"], end);
  });
  return fc.oneof(
    { weight: 1, arbitrary: written },
    { weight: 4, arbitrary: slipped },
    { weight: 3, arbitrary: oddFile },
  );
}
