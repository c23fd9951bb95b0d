/** The days of 2000 to 2399, counted one by one from 2000-01-01, a Saturday: written apart from the calendar that it checks. */

export interface WalkedDay {
  /** Days since 1970-01-01; 2000-01-01 is 10957. */
  readonly number: number;
  readonly year: number;
  readonly month: number;
  readonly day: number;
  /** Monday is 1. */
  readonly weekday: number;
}

const LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

function* walk(): Generator<WalkedDay> {
  let number = 10_957;
  let weekday = 6;
  for (let year = 2000; year < 2400; year++) {
    const isLeap = year % 400 === 0 || (year % 4 === 0 && year % 100 !== 0);
    for (const [index, length] of LENGTHS.entries()) {
      const days = index === 1 && isLeap ? 29 : length;
      for (let day = 1; day <= days; day++) {
        yield { number, year, month: index + 1, day, weekday };
        number++;
        weekday = weekday === 7 ? 1 : weekday + 1;
      }
    }
  }
}

export const WALKED_DAYS: readonly WalkedDay[] = [...walk()];

/** The walked days in runs, a new one wherever `begins` says so; the first and the last run may be cut short. */
export function runsOf(begins: (day: WalkedDay) => boolean): readonly (readonly WalkedDay[])[] {
  const runs: WalkedDay[][] = [];
  for (const each of WALKED_DAYS) {
    if (runs.length === 0 || begins(each)) runs.push([]);
    runs.at(-1)?.push(each);
  }
  return runs;
}
