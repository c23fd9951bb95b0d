/** One content line as its parameters and values, by ical.js. */
import ICAL from "ical.js";
import type { PropertyLine } from "./components.ts";
import { type Moment, readMoment } from "./moment.ts";

export interface Property {
  readonly line: number;
  /** Of `TZID`, where there is one. */
  readonly zone?: string;
  /** Does it say `RANGE=THISANDFUTURE`? */
  readonly hasAllAfter: boolean;
  /** As jCal has them (RFC 7265, 3.4). */
  readonly values: readonly unknown[];
  /** Is every byte of it UTF-8? */
  readonly isUtf8: boolean;
}

/** Longer lines are no dates, and no titles that anybody reads. */
const LONGEST_LINE = 16_384;

/** Nothing where the line is none that RFC 5545 knows. */
export function readProperty({ line, bytes }: PropertyLine): Property | undefined {
  if (bytes.length > LONGEST_LINE) return undefined;
  const text = new TextDecoder().decode(bytes);
  const property = parsed(text);
  if (!Array.isArray(property)) return undefined;
  const [, parameters, , ...values]: readonly unknown[] = property;
  const zone = parameter(parameters, "tzid");
  return {
    line,
    values,
    isUtf8: isUtf8(bytes),
    hasAllAfter: parameter(parameters, "range") === "THISANDFUTURE",
    ...(zone !== undefined && { zone }),
  };
}

/** ical.js throws at whatever it cannot read. */
function parsed(text: string): unknown {
  try {
    return ICAL.parse.property(text, ICAL.design.icalendar);
  } catch {
    return undefined;
  }
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

function parameter(parameters: unknown, name: string): string | undefined {
  const found = Object.entries(parameters ?? {}).find(([key]) => key === name)?.[1];
  return typeof found === "string" ? found : undefined;
}

/** The dates and times of a line; of a period where it begins. Nothing where one does not exist. */
export function momentsOf({ values, zone }: Property): readonly Moment[] | undefined {
  const moments = values.map((value) => readMoment(Array.isArray(value) ? value[0] : value, zone));
  const found = moments.filter((moment) => moment !== undefined);
  return found.length === moments.length && found.length > 0 ? found : undefined;
}

/** A length of time in seconds (3.3.6); nothing where it is none. */
export function durationOf({ values: [value] }: Property): number | undefined {
  if (typeof value !== "string" || !DURATION.test(value)) return undefined;
  const seconds = ICAL.Duration.fromString(value).toSeconds();
  return Math.abs(seconds) <= LONGEST_DURATION ? seconds : undefined;
}

const DURATION =
  /^[+-]?P(?:\d{1,9}W|(?=\d|T\d)(?:\d{1,9}D)?(?:T(?:\d{1,9}H)?(?:\d{1,9}M)?(?:\d{1,9}S)?)?)$/;
/** Ten thousand years. */
const LONGEST_DURATION = 10_000 * 366 * 86_400;

/** A text on one line, of a length that can be shown. */
export function textOf({ values: [value] }: Property): string {
  const text = typeof value === "string" ? value : "";
  return [
    ...text
      .slice(0, 2 * LONGEST_TEXT)
      .replace(/[\s\p{Cc}]+/gu, " ")
      .trim(),
  ]
    .slice(0, LONGEST_TEXT)
    .join("");
}

const LONGEST_TEXT = 200;
