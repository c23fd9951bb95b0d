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
