/** The components of a calendar file: its events and time zones, each with those of its lines that say something about days. */
import type { ContentLine } from "./content-lines.ts";

/** A line of a component that is read. */
export interface PropertyLine extends ContentLine {
  /** In capitals. */
  readonly name: string;
}

export interface Component {
  /** `VEVENT`, `VTIMEZONE`, … in capitals. */
  readonly name: string;
  /** Of its BEGIN. */
  readonly line: number;
  readonly properties: readonly PropertyLine[];
  readonly parts: readonly Component[];
}

export interface Components {
  /** Outermost ones: `VCALENDAR`, where the file is a calendar. */
  readonly roots: readonly Component[];
  /** Where a component begins and does not end, or ends without a beginning. */
  readonly unclosed: readonly number[];
}

/** What is read of each component; all else is passed over unread. */
const READ: Readonly<Record<string, readonly string[]>> = {
  VEVENT: [
    "UID",
    "SUMMARY",
    "DTSTART",
    "DTEND",
    "DURATION",
    "RRULE",
    "RDATE",
    "EXDATE",
    "RECURRENCE-ID",
    "STATUS",
  ],
  VTIMEZONE: ["TZID"],
  STANDARD: ["DTSTART", "RRULE", "RDATE", "TZOFFSETFROM", "TZOFFSETTO"],
  DAYLIGHT: ["DTSTART", "RRULE", "RDATE", "TZOFFSETFROM", "TZOFFSETTO"],
};

/** Deeper ones are passed over: RFC 5545 has none deeper than three. */
const DEEPEST = 8;
/** Longer than any name of a property. */
const LONGEST_NAME = 40;

interface Open extends Component {
  readonly properties: PropertyLine[];
  readonly parts: Component[];
}

/** A component that is not closed, for instance since the file is cut off, is left out. */
export function readComponents(lines: readonly ContentLine[]): Components {
  const roots: Component[] = [];
  const unclosed: number[] = [];
  const open: Open[] = [];
  let deeper = 0;
  for (const { line, bytes } of lines) {
    const name = nameOf(bytes);
    if (name === "BEGIN") {
      if (open.length === DEEPEST) deeper++;
      else open.push({ name: componentName(bytes), line, properties: [], parts: [] });
    } else if (name === "END" && deeper > 0) {
      deeper--;
    } else if (name === "END") {
      const ending = componentName(bytes);
      const ended = open.findLastIndex((one) => one.name === ending);
      const [closed, ...left] = ended < 0 ? [] : open.splice(ended);
      unclosed.push(...(closed ? left.map((one) => one.line) : [line]));
      if (closed) (open.at(-1)?.parts ?? roots).push(closed);
    } else if (deeper === 0) {
      const last = open.at(-1);
      if (last && READ[last.name]?.includes(name)) last.properties.push({ name, line, bytes });
    }
  }
  return { roots, unclosed: [...unclosed, ...open.map(({ line }) => line)] };
}

/** The lines of a component with a name. */
export function linesNamed(component: Component, name: string): readonly PropertyLine[] {
  return component.properties.filter((one) => one.name === name);
}

/** What stands before the first `:` or `;`, where it can be a name. */
function nameOf(bytes: Uint8Array): string {
  let end = 0;
  while (end < LONGEST_NAME && bytes[end] !== COLON && bytes[end] !== SEMICOLON) end++;
  return ascii(bytes.subarray(0, end)).toUpperCase();
}

/** Of BEGIN and END, which have no parameters. */
function componentName(bytes: Uint8Array): string {
  const from = bytes.indexOf(COLON) + 1;
  return ascii(bytes.subarray(from, from + LONGEST_NAME))
    .trim()
    .toUpperCase();
}

const [COLON, SEMICOLON] = [0x3a, 0x3b];

function ascii(bytes: Uint8Array): string {
  return String.fromCharCode(...bytes);
}
