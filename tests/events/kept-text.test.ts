/** What is kept on a device of a calendar file. */
import { expect, it } from "vitest";
import { keptText } from "../../src/events/kept-text.ts";
import { BERLIN, event, readText, shownIn, years } from "./written.ts";

const IN_2027 = years(2027);

it("what is kept of a file says nothing of people and places, and reads the same", () => {
  const folded = "SUMMARY:Seed swap in the\r\n  hut";
  const all = [
    ...BERLIN,
    ...event(
      "UID:1",
      folded,
      "DTSTART;TZID=Europe/Berlin:20270327T090000",
      "LOCATION:Odile's",
      "RRULE:FREQ=DAILY;UNTIL=20270330T070000Z",
      "ATTENDEE:mailto:odile@example.org",
    ),
  ];
  const text = ["BEGIN:VCALENDAR", ...all, "END:VCALENDAR"].join("\r\n");
  const kept = keptText(new TextEncoder().encode(text));
  expect(kept).not.toMatch(/Odile|example/i);
  expect(shownIn(readText(kept), IN_2027)).toEqual(shownIn(readText(text), IN_2027));
  expect(shownIn(readText(kept), IN_2027)).toHaveLength(4);
});
