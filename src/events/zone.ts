/** What a clock shows in a time zone that the file itself describes (RFC 5545, 3.6.5). */
import { type Component, linesNamed } from "./components.ts";
import { DAY, dayAt, later, type Moment, secondsOf } from "./moment.ts";
import { momentsOf, readProperty, textOf } from "./property.ts";
import { recur, type Steps } from "./recur.ts";
import { type Rule, readRule } from "./rule.ts";

/** By their names in the file. */
export type Zones = ReadonlyMap<string, Zone>;

/** From when on clocks are so far ahead of UTC. */
interface Observance {
  /** In seconds, as the clock showed until then. */
  readonly start: number;
  readonly also: readonly number[];
  readonly rule?: Rule;
  /** Ahead of UTC in seconds, before and from then on. */
  readonly before: number;
  readonly after: number;
}

type Zone = readonly Observance[];

/** All zones that a calendar describes. */
export function readZones(calendars: readonly Component[]): Zones {
  const zones = calendars.flatMap(({ parts }) => parts.filter(({ name }) => name === "VTIMEZONE"));
  return new Map(
    zones.map((zone) => {
      const observances = zone.parts.flatMap((part) => readObservance(part) ?? []);
      return [textIn(zone, "TZID"), observances];
    }),
  );
}

function readObservance(part: Component): Observance | undefined {
  const start = valueIn(part, "DTSTART");
  const moment = start && momentsOf(start)?.[0];
  if (!moment) return undefined;
  const dates = linesNamed(part, "RDATE").flatMap((line) => readProperty(line) ?? []);
  const rule = valueIn(part, "RRULE");
  const read = rule && readRule(rule.values[0], undefined);
  return {
    start: secondsOf(moment),
    also: dates.flatMap((one) => momentsOf(one) ?? []).map(secondsOf),
    ...(read && !("part" in read) && { rule: read }),
    before: offsetOf(valueIn(part, "TZOFFSETFROM")?.values[0]),
    after: offsetOf(valueIn(part, "TZOFFSETTO")?.values[0]),
  };
}

function valueIn(part: Component, name: string) {
  const [line] = linesNamed(part, name);
  return line && readProperty(line);
}

function textIn(part: Component, name: string): string {
  const property = valueIn(part, name);
  return property ? textOf(property) : "";
}

/** `+01:00` in seconds. */
function offsetOf(written: unknown): number {
  const found =
    typeof written === "string" ? /^([+-])(\d\d):(\d\d)(?::(\d\d))?$/.exec(written) : null;
  const [, sign, hours = 0, minutes = 0, seconds = 0] = found ?? [];
  return (sign === "-" ? -1 : 1) * (Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds));
}

/** A moment of UTC as the clocks of a zone show it; any other, or of a zone that is not described, as it is. */
export function onClock(of: Moment, zone: string | undefined, zones: Zones, steps: Steps): Moment {
  const described = zone === undefined ? undefined : zones.get(zone);
  if (of.zone !== "UTC" || of.second === undefined || !described) return of;
  return { ...later(of, offsetAt(secondsOf(of), described, steps)), zone: zone ?? "" };
}

/** Since the last change of clocks before it. */
function offsetAt(utc: number, zone: Zone, steps: Steps): number {
  let latest = -Infinity;
  let offset = zone[0]?.before ?? 0;
  for (const observance of zone) {
    for (const local of changes(observance, utc, steps)) {
      // Worth more than a day that is looked at: zones of some files change often.
      steps.left -= 3;
      const at = local - observance.before;
      if (at <= utc && at > latest) [latest, offset] = [at, observance.after];
    }
  }
  return offset;
}

/** A rule of clocks comes true each year: so far back is enough. */
const LOOK_BACK = 366 * DAY;

function* changes({ start, also, rule }: Observance, utc: number, steps: Steps) {
  yield start;
  yield* also;
  if (!rule) return;
  const until = rule.until ? secondsOf(rule.until) + DAY : Infinity;
  const last = Math.min(utc + DAY, until);
  const from = dayAt(last - LOOK_BACK) * DAY;
  yield* recur({ rule, start, isWholeDay: false, until, from, to: last }, steps);
}
