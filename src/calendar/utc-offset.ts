/** How far a clock is ahead of UTC, written as RFC 3339 has it: `+00:00`, `+05:30`, `-08:00`. */

const FORM = /^([+-])(\d\d):([0-5]\d)$/;

/** The clocks of the earth are 12 hours behind UTC at most, and 14 ahead of it (IANA's time zone database). */
const BEHIND = -12 * 60;
const AHEAD = 14 * 60;

/** The minutes of a written offset; nothing where it is not one, or of no clock on earth. */
export function readUtcOffset(written: string): number | undefined {
  const [, sign, hours, minutes] = FORM.exec(written) ?? [];
  if (sign === undefined) return undefined;
  const ahead = Number(hours) * 60 + Number(minutes);
  const offset = sign === "-" ? 0 - ahead : ahead;
  return offset >= BEHIND && offset <= AHEAD ? offset : undefined;
}

/** An offset as it is written; in whole minutes. */
export function writeUtcOffset(minutes: number): string {
  const ahead = Math.abs(minutes);
  const two = (number: number) => `${number}`.padStart(2, "0");
  return `${minutes < 0 ? "-" : "+"}${two(Math.floor(ahead / 60))}:${two(ahead % 60)}`;
}
