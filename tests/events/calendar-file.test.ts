/** What a calendar file says, line by line: days, times, titles, exceptions, and how its text is written. */
import { describe, expect, it } from "vitest";
import { dayOf, isoText } from "../../src/calendar/day.ts";
import { CALENDAR_LIMITS, readCalendarFile } from "../../src/events/calendar-file.ts";
import { eventsIn } from "../../src/events/events-in.ts";
import { BERLIN, calendarOf, event, readText, shownIn, years } from "./written.ts";

const IN_2027 = years(2027);

it.each<readonly [about: string, lines: readonly string[], shown: readonly string[]]>([
  ["a whole day", ["DTSTART;VALUE=DATE:20270305"], ["2027-03-05 Swap"]],
  [
    "the end of whole days is exclusive (3.6.1)",
    ["DTSTART;VALUE=DATE:20270305", "DTEND;VALUE=DATE:20270308"],
    ["2027-03-05/2027-03-07 Swap"],
  ],
  [
    "an end on the day itself adds none",
    ["DTSTART;VALUE=DATE:20270305", "DTEND;VALUE=DATE:20270305"],
    ["2027-03-05 Swap"],
  ],
  ["a date that does not say it is one", ["DTSTART:20270305"], ["2027-03-05 Swap"]],
  ["a time anywhere", ["DTSTART:20270305T093000"], ["2027-03-05 09:30 Swap"]],
  ["a time in UTC, as written", ["DTSTART:20270305T233000Z"], ["2027-03-05 23:30 Swap"]],
  [
    "a time in a zone, as written",
    ["DTSTART;TZID=Pacific/Auckland:20270305T233000"],
    ["2027-03-05 23:30 Swap"],
  ],
  [
    "a zone in quotes",
    ['DTSTART;TZID="Europe/Berlin; summer":20270305T093000'],
    ["2027-03-05 09:30 Swap"],
  ],
  [
    "over midnight",
    ["DTSTART:20270305T220000", "DTEND:20270306T020000"],
    ["2027-03-05/2027-03-06 22:00 Swap"],
  ],
  [
    "until midnight",
    ["DTSTART:20270305T220000", "DTEND:20270306T000000"],
    ["2027-03-05 22:00 Swap"],
  ],
  ["a length", ["DTSTART:20270305T220000", "DURATION:PT2H"], ["2027-03-05 22:00 Swap"]],
  [
    "a length over midnight",
    ["DTSTART:20270305T220000", "DURATION:PT2H1S"],
    ["2027-03-05/2027-03-06 22:00 Swap"],
  ],
  [
    "a length of days",
    ["DTSTART;VALUE=DATE:20270305", "DURATION:P2D"],
    ["2027-03-05/2027-03-06 Swap"],
  ],
  [
    "a length of weeks",
    ["DTSTART;VALUE=DATE:20270301", "DURATION:P1W"],
    ["2027-03-01/2027-03-07 Swap"],
  ],
  ["a leap day", ["DTSTART;VALUE=DATE:20280229"], []],
  [
    "a birthday of long ago",
    ["DTSTART;VALUE=DATE:19310717", "RRULE:FREQ=YEARLY"],
    ["2027-07-17 Swap"],
  ],
  [
    "days taken out, by date and by time",
    [
      "DTSTART:20270301T090000",
      "RRULE:FREQ=DAILY;COUNT=5",
      "EXDATE:20270302T090000,20270303T080000",
      "EXDATE;VALUE=DATE:20270304",
    ],
    ["2027-03-01 09:00 Swap", "2027-03-03 09:00 Swap", "2027-03-05 09:00 Swap"],
  ],
  [
    "days added, one of them twice (3.8.5.2)",
    [
      "DTSTART;VALUE=DATE:20270301",
      "RDATE;VALUE=DATE:20270410,20270301",
      "RDATE;VALUE=DATE:20270410",
    ],
    ["2027-03-01 Swap", "2027-04-10 Swap"],
  ],
  [
    "a period added begins where it begins",
    ["DTSTART:20270301T090000", "RDATE;VALUE=PERIOD:20270402T100000/PT1H"],
    ["2027-03-01 09:00 Swap", "2027-04-02 10:00 Swap"],
  ],
  ["cancelled", ["DTSTART;VALUE=DATE:20270301", "STATUS:CANCELLED"], []],
  [
    "until a date, with times",
    ["DTSTART:20270301T090000", "RRULE:FREQ=DAILY;UNTIL=20270303"],
    ["2027-03-01 09:00 Swap", "2027-03-02 09:00 Swap", "2027-03-03 09:00 Swap"],
  ],
  [
    "until before its start there is none",
    ["DTSTART:20270301T090000", "RRULE:FREQ=DAILY;UNTIL=20270228T090000"],
    [],
  ],
  [
    "from the year before",
    ["DTSTART;VALUE=DATE:20261230", "DTEND;VALUE=DATE:20270103"],
    ["2026-12-30/2027-01-02 Swap"],
  ],
  [
    "each week's number, on the start's weekday (3.3.10)",
    ["DTSTART;VALUE=DATE:20270106", "RRULE:FREQ=YEARLY;BYWEEKNO=1,2"],
    ["2027-01-06 Swap", "2027-01-13 Swap"],
  ],
  [
    "whole days have no use for hours (3.3.10)",
    ["DTSTART;VALUE=DATE:20270106", "RRULE:FREQ=HOURLY;COUNT=30;BYMINUTE=5"],
    ["2027-01-06 Swap", "2027-01-07 Swap"],
  ],
])("%s", (_, lines, wanted) => {
  const file = calendarOf(event("UID:1", "SUMMARY:Swap", ...lines));
  expect(file.issues).toEqual([]);
  expect(shownIn(file, IN_2027)).toEqual(wanted);
});

it.each([
  // 30 March 2027 is in summer time: 22:00 UTC is midnight in Berlin.
  ["20270329T220000Z", ["2027-03-27", "2027-03-28", "2027-03-29"]],
  ["20270330T070000Z", ["2027-03-27", "2027-03-28", "2027-03-29", "2027-03-30"]],
  // At 07:59:59 in winter time it is not nine in Berlin; in summer time, since the 28th, it is.
  ["20270327T075959Z", []],
  ["20270327T080000Z", ["2027-03-27"]],
])("a row until %s ends by the clocks of its zone", (until, days) => {
  const file = calendarOf([
    ...BERLIN,
    ...event("DTSTART;TZID=Europe/Berlin:20270327T090000", `RRULE:FREQ=DAILY;UNTIL=${until}`),
  ]);
  expect(shownIn(file, IN_2027)).toEqual(days.map((day) => `${day} 09:00`));
  expect(file.notes).toEqual([]);
});

it("a day taken out in UTC is the one of its zone", () => {
  const file = calendarOf([
    ...BERLIN,
    ...event(
      "DTSTART;TZID=Europe/Berlin:20270701T003000",
      "RRULE:FREQ=DAILY;COUNT=3",
      "EXDATE:20270701T223000Z",
    ),
  ]);
  expect(shownIn(file, IN_2027)).toEqual(["2027-07-01 00:30", "2027-07-03 00:30"]);
});

describe("one of a row", () => {
  const row = event(
    "UID:committee",
    "SUMMARY:Committee",
    "DTSTART:20270311T190000",
    "RRULE:FREQ=MONTHLY;BYDAY=2TH;COUNT=3",
  );

  it.each<readonly [string, readonly string[], readonly string[]]>([
    [
      "is moved",
      ["RECURRENCE-ID:20270408T190000", "DTSTART:20270409T200000", "SUMMARY:Committee, moved"],
      [
        "2027-03-11 19:00 Committee",
        "2027-04-09 20:00 Committee, moved",
        "2027-05-13 19:00 Committee",
      ],
    ],
    [
      "is cancelled",
      ["RECURRENCE-ID:20270408T190000", "DTSTART:20270408T190000", "STATUS:CANCELLED"],
      ["2027-03-11 19:00 Committee", "2027-05-13 19:00 Committee"],
    ],
    [
      "is named by its day",
      ["RECURRENCE-ID;VALUE=DATE:20270408", "DTSTART:20270407T190000", "SUMMARY:Early"],
      ["2027-03-11 19:00 Committee", "2027-04-07 19:00 Early", "2027-05-13 19:00 Committee"],
    ],
  ])("%s", (_, lines, wanted) => {
    const other = event("UID:committee", ...lines);
    for (const all of [
      [...row, ...other],
      [...other, ...row],
    ])
      expect(shownIn(calendarOf(all), IN_2027)).toEqual(wanted);
  });

  it("of another row it takes nothing away", () => {
    const other = event("UID:swap", "RECURRENCE-ID:20270408T190000", "DTSTART:20270408T100000");
    expect(shownIn(calendarOf([...row, ...other]), IN_2027)).toHaveLength(4);
  });
});

describe("the text", () => {
  const wanted = ["2027-03-05 Swap, seeds; ünd “Töpfe” \\n 花"];
  const lines = event(
    "DTSTART;VALUE=DATE:20270305",
    "SUMMARY:Swap\\, seeds\\; ünd\\n “Töpfe” \\\\n 花",
  );

  it.each([
    ["CR LF", "\r\n"],
    ["LF", "\n"],
    ["CR", "\r"],
  ])("ends lines with %s", (_, end) => {
    expect(shownIn(calendarOf(lines, end), IN_2027)).toEqual(wanted);
  });

  it("may begin with a byte order mark", () => {
    const text = ["\uFEFFBEGIN:VCALENDAR", ...lines, "END:VCALENDAR"].join("\r\n");
    expect(shownIn(readText(text), IN_2027)).toEqual(wanted);
  });

  it.each([1, 2, 3, 75])(
    "is folded after %i octets, in the middle of letters too (3.1)",
    (octets) => {
      const bytes = new TextEncoder().encode(lines.join("\r\n"));
      const fold = new TextEncoder().encode("\r\n ");
      const folded: number[] = [];
      let column = 0;
      for (const byte of bytes) {
        if (column === octets && byte !== 0x0d && byte !== 0x0a) {
          folded.push(...fold);
          column = 0;
        }
        folded.push(byte);
        column = byte === 0x0a ? 0 : column + 1;
      }
      const around = (text: string) => [...new TextEncoder().encode(text)];
      const all = [...around("BEGIN:VCALENDAR\r\n"), ...folded, ...around("\r\nEND:VCALENDAR\r\n")];
      const file = readCalendarFile({ path: "lane.ics", bytes: Uint8Array.from(all) });
      expect(shownIn(file, IN_2027)).toEqual(wanted);
    },
  );

  it("may have no title, and small letters", () => {
    const small = ["begin:vevent", "dtstart;value=date:20270305", "end:vevent"];
    expect(shownIn(calendarOf(small), IN_2027)).toEqual(["2027-03-05"]);
  });

  it("of an alarm inside an event is not the event's", () => {
    const alarm = ["BEGIN:VALARM", "SUMMARY:Alarm", "DURATION:P9D", "END:VALARM"];
    const file = calendarOf(event("DTSTART;VALUE=DATE:20270305", ...alarm, "SUMMARY:Swap"));
    expect(shownIn(file, IN_2027)).toEqual(["2027-03-05 Swap"]);
  });

  it("keeps a title that looks like markup as its letters", () => {
    const title = "<img src=x onerror=alert(1)>";
    const file = calendarOf(event("DTSTART;VALUE=DATE:20270305", `SUMMARY:${title}`));
    expect(shownIn(file, IN_2027)).toEqual([`2027-03-05 ${title}`]);
  });
});

it.each<readonly [kind: string, line: number, lines: readonly string[], shown: number]>([
  ["no-start", 4, event("SUMMARY:Swap"), 0],
  ["bad-line", 5, event("DTSTART;VALUE=DATE:20270230"), 0],
  ["bad-line", 5, event("DTSTART:tomorrow"), 0],
  ["bad-line", 6, event("DTSTART:20270305", "DTEND:20270399"), 1],
  ["bad-line", 6, event("DTSTART:20270305", "DURATION:PT"), 1],
  ["bad-line", 6, event("DTSTART:20270305", "DURATION:-P2D"), 1],
  ["bad-line", 6, event("DTSTART:20270305", "EXDATE"), 1],
  ["bad-line", 6, event("DTSTART:20270305", "RRULE:FREQ=DAILY;BYDAY"), 1],
  ["bad-rule", 6, event("DTSTART:20270305", "RRULE:FREQ=DAILY;COUNT=0"), 1],
  ["bad-rule", 6, event("DTSTART:20270305", "RRULE:FREQ=WEEKLY;BYDAY=2MO"), 1],
  ["bad-rule", 6, event("DTSTART:20270305", "RRULE:FREQ=MONTHLY;BYSETPOS=0;BYDAY=MO"), 1],
  ["bad-rule", 6, event("DTSTART:20270305", "RRULE:FREQ=MONTHLY;BYWEEKNO=3"), 1],
  ["bad-rule", 6, event("DTSTART:20270305", "RRULE:BYDAY=MO"), 1],
  ["bad-rule", 6, event("DTSTART:20270305", "RRULE:FREQ=DAILY;UNTIL=20270230"), 1],
  ["ends-before-start", 6, event("DTSTART:20270305", "DTEND:20270304"), 1],
  ["unclosed", 4, ["BEGIN:VEVENT", "DTSTART:20270305"], 0],
  ["unclosed", 4, ["END:VEVENT", ...event("DTSTART:20270305")], 1],
])("%s in line %i", (kind, line, lines, count) => {
  const file = calendarOf(lines);
  expect(file.issues.map(({ kind, at }) => [kind, at.line])).toEqual([[kind, line]]);
  expect(shownIn(file, IN_2027)).toHaveLength(count);
});

it.each([
  ["no-calendar", ""],
  ["no-calendar", "Dear all,\nthe seed swap is on Friday."],
  ["no-calendar", "BEGIN:VCARD\nEND:VCARD\n"],
  ["unclosed", "BEGIN:VCALENDAR\nBEGIN:VEVENT\nDTSTART:20270305\n"],
  ["too-large", `BEGIN:VCALENDAR\n${"X".repeat(CALENDAR_LIMITS.kib * 1024)}`],
])("%s", (kind, text) => {
  expect(readText(text).issues.map((issue) => issue.kind)).toContain(kind);
});

it.each([
  ["in-utc", event("DTSTART:20270305T090000Z")],
  [
    "unknown-zone",
    event("DTSTART;TZID=Nowhere:20270305T090000", "RRULE:FREQ=DAILY;UNTIL=20270306T000000Z"),
  ],
  [
    "and-all-after",
    event("DTSTART:20270305T090000", "RECURRENCE-ID;RANGE=THISANDFUTURE:20270305T090000"),
  ],
])("%s is worth a word, once for a file", (kind, lines) => {
  const { issues, notes } = calendarOf([...lines, ...lines]);
  expect(issues).toEqual([]);
  expect(notes.map((note) => note.kind)).toEqual([kind]);
});

it("a letter that is not UTF-8 is told, and the event shown", () => {
  const [before, after] = [
    "BEGIN:VCALENDAR\nBEGIN:VEVENT\nSUMMARY:M",
    "rz\nDTSTART:20270305\nEND:VEVENT\nEND:VCALENDAR",
  ];
  const encode = (text: string) => [...new TextEncoder().encode(text)];
  const bytes = Uint8Array.from([...encode(before ?? ""), 0xe4, ...encode(after ?? "")]);
  const file = readCalendarFile({ path: "lane.ics", bytes });
  expect(file.issues.map(({ kind, at }) => [kind, at.line])).toEqual([["not-utf8-line", 3]]);
  expect(shownIn(file, IN_2027)).toEqual(["2027-03-05 M\uFFFDrz"]);
});

it("too many of one event are told, and the first of them shown", () => {
  const file = calendarOf(event("DTSTART:20270101T000000", "RRULE:FREQ=MINUTELY"));
  const { events, issues } = eventsIn([file], IN_2027);
  expect(issues.map(({ kind, at }) => [kind, at.line])).toEqual([["too-many-times", 5]]);
  expect(events).toHaveLength(2000);
  expect(events.map(({ from }) => isoText(from)).at(-1)).toBe("2027-01-02");
});

it("a row that takes too long to count is told", () => {
  const file = calendarOf([
    ...event("DTSTART:00010101T000000", "RRULE:FREQ=SECONDLY;COUNT=1000000000"),
    ...event("DTSTART:20270305", "SUMMARY:Swap"),
  ]);
  const { issues } = eventsIn([file], IN_2027);
  expect(issues.map(({ kind, at }) => [kind, at.line])).toEqual([["too-long-to-count", 5]]);
});

it("events of several files stand in one order, whole days first", () => {
  const a = calendarOf([
    ...event("DTSTART:20270305T180000", "SUMMARY:b"),
    ...event("DTSTART:20270304T090000", "SUMMARY:a"),
  ]);
  const b = calendarOf([
    ...event("DTSTART:20270305T093000", "SUMMARY:c"),
    ...event("DTSTART:20270305", "SUMMARY:d"),
  ]);
  const day = dayOf({ year: 2027, month: 3, day: 5 });
  const { events } = eventsIn([a, b], { from: day, to: day });
  expect(events.map(({ title }) => title)).toEqual(["d", "c", "b"]);
});
