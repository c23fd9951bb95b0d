/** Set-ups by the text of the rules alone: dates are counted by the platform's own, and what a pattern takes is given. */

/** Which of two facing pages. */
export type Side = "left" | "right";

export interface Days {
  readonly from: string;
  readonly to: string;
}

/** What is said of a pattern: its span, if it has one, and what it takes for given days on a side. */
export interface KnownPattern {
  readonly span?: "day" | "week" | "month" | "quarter" | "year";
  readonly takes: (
    days: Days | undefined,
    side: Side,
    world: World,
  ) => "page" | "spread" | "nothing";
}

export interface World {
  /** Monday is 1, Sunday 7. */
  readonly weekBegins: number;
  readonly binding: "left" | "right" | "top" | "none";
  readonly patterns: Readonly<Record<string, KnownPattern>>;
}

export type WrittenEntry =
  | string
  | { readonly pattern: string; readonly times?: number; readonly borders?: string }
  | { readonly each: string; readonly borders?: string; readonly pages: readonly WrittenEntry[] };

export interface WrittenSetup {
  readonly dates: Days;
  readonly first: number;
  readonly pages: readonly WrittenEntry[];
  readonly fill?: string;
}

export interface TextPage {
  readonly number: number;
  readonly pattern: string | null;
  readonly side?: Side;
  readonly dates?: Days | null;
  readonly plan?: number;
}

const DAY_MS = 86_400_000;

function toNumber(text: string): number {
  return Math.round(Date.parse(`${text}T00:00:00Z`) / DAY_MS);
}

function toText(number: number): string {
  return new Date(number * DAY_MS).toISOString().slice(0, 10);
}

/** The span of a kind that a day lies in, found by walking from the day to both sides. */
export function spanAround(kind: string, day: number, weekBegins: number): Days {
  const isSame = (other: number) =>
    nameOf(kind, other, weekBegins) === nameOf(kind, day, weekBegins);
  let [from, to] = [day, day];
  while (isSame(from - 1)) from -= 1;
  while (isSame(to + 1)) to += 1;
  return { from: toText(from), to: toText(to) };
}

function nameOf(kind: string, day: number, weekBegins: number): string {
  const date = new Date(day * DAY_MS);
  const [year, month] = [date.getUTCFullYear(), date.getUTCMonth()];
  if (kind === "day") return toText(day);
  if (kind === "month") return `${year}-${month}`;
  if (kind === "quarter") return `${year}-${Math.floor(month / 3)}`;
  if (kind === "year") return `${year}`;
  const since = (date.getUTCDay() + 7 - (weekBegins % 7)) % 7;
  return `week of ${day - since}`;
}

/** All spans of a kind that have a day in every one of some runs of days, in order. */
function spansOf(kind: string, runs: readonly Days[], weekBegins: number): readonly Days[] {
  const from = Math.max(...runs.map((run) => toNumber(run.from)));
  const to = Math.min(...runs.map((run) => toNumber(run.to)));
  const found: Days[] = [];
  for (let day = from; day <= to; ) {
    const span = spanAround(kind, day, weekBegins);
    found.push(span);
    day = toNumber(span.to) + 1;
  }
  return found;
}

function isWanted(span: Days, borders: string | undefined, dates: Days): boolean {
  if (borders === "first") return span.from >= dates.from;
  if (borders === "last") return span.to <= dates.to;
  return true;
}

interface Drawing {
  readonly pattern: string;
  readonly days?: Days;
}

/** What is drawn, in order, whether or not it fits. */
function drawings(setup: WrittenSetup, world: World): readonly Drawing[] {
  const all: Drawing[] = [];
  const done = new Set<string>();
  const visit = (entry: WrittenEntry, place: string, unit: Days | undefined): void => {
    const runs = unit ? [unit, setup.dates] : [setup.dates];
    if (typeof entry !== "string" && "each" in entry) {
      for (const one of spansOf(entry.each, runs, world.weekBegins)) {
        if (!isWanted(one, entry.borders, setup.dates)) continue;
        for (const [index, inner] of entry.pages.entries()) visit(inner, `${place}/${index}`, one);
      }
      return;
    }
    const { pattern, times = 1, borders } = typeof entry === "string" ? { pattern: entry } : entry;
    const span = world.patterns[pattern]?.span;
    const units = span
      ? spansOf(span, runs, world.weekBegins).filter((one) => isWanted(one, borders, setup.dates))
      : [undefined];
    for (const days of units) {
      const key = `${place} ${JSON.stringify(days ?? unit)}`;
      if (done.has(key)) continue;
      done.add(key);
      for (let time = 0; time < (span ? 1 : times); time++)
        all.push(days ? { pattern, days } : { pattern });
    }
  };
  for (const [index, entry] of setup.pages.entries()) visit(entry, `${index}`, undefined);
  return all;
}

function sideOf(number: number, { binding }: World): Side {
  const isOdd = number % 2 === 1;
  if (binding === "right") return isOdd ? "left" : "right";
  return isOdd ? "right" : "left";
}

/** How many drawings are wanted; pages, which plans they show, contents, uses and what is left out. */
export function setUpByTheText(setup: WrittenSetup, world: World) {
  const pages: TextPage[] = [];
  const plans: string[] = [];
  const uses: { pattern: string; times: number }[] = [];
  const leftOut: { pattern: string; dates?: Days }[] = [];
  const next = () => setup.first + pages.length;
  const put = (pattern: string, days: Days | undefined, isHalf: boolean): void => {
    const number = next();
    const side = sideOf(number, world);
    const name = `${pattern} ${days?.from ?? ""} ${isHalf ? "both" : side}`;
    if (!plans.includes(name)) plans.push(name);
    pages.push({ number, pattern, side, dates: days ?? null, plan: plans.indexOf(name) });
    if (isHalf && number % 2 === 1) return;
    const known = uses.find((use) => use.pattern === pattern);
    if (known) known.times += 1;
    else uses.push({ pattern, times: 1 });
  };
  const leave = (pattern: string, days?: Days): void => {
    if (leftOut.some((one) => one.pattern === pattern && one.dates?.from === days?.from)) return;
    leftOut.push(days ? { pattern, dates: days } : { pattern });
  };
  const takes = (pattern: string, days: Days | undefined) =>
    world.patterns[pattern]?.takes(days, sideOf(next(), world), world) ?? "nothing";
  const wanted = drawings(setup, world);
  for (const { pattern, days } of wanted) {
    const taken = takes(pattern, days);
    if (taken === "nothing") leave(pattern, days);
    else if (taken === "page") put(pattern, days, false);
    else {
      if (next() % 2 === 1) {
        if (setup.fill !== undefined && takes(setup.fill, undefined) === "page")
          put(setup.fill, undefined, false);
        else {
          if (setup.fill !== undefined) leave(setup.fill);
          pages.push({ number: next(), pattern: null });
        }
      }
      put(pattern, days, true);
      put(pattern, days, true);
    }
  }
  return { wanted: wanted.length, pages, plans, contents: contentsOf(pages), uses, leftOut };
}

function contentsOf(pages: readonly TextPage[]) {
  const lines: { pattern: string; days: string[]; from: number; to: number }[] = [];
  for (const [index, { number, pattern, dates }] of pages.entries()) {
    if (pattern === null) continue;
    const days = dates ? [dates.from, dates.to] : [];
    const last = lines.at(-1);
    if (last && pages[index - 1]?.pattern === pattern) {
      last.to = number;
      last.days.push(...days);
    } else lines.push({ pattern, days, from: number, to: number });
  }
  return lines.map(({ pattern, days, from, to }) => {
    const sorted = days.toSorted();
    const [first, last] = [sorted[0], sorted.at(-1)];
    const dates = first !== undefined && last !== undefined ? { from: first, to: last } : null;
    return { title: `Of ${pattern}`, dates, from, to };
  });
}
