/** Which spans of a year a pattern fits, in sentences; and what of a span tells those that it does not from the others. */
import { asSentence, nounFor, sayCount, sayList } from "./say-count.ts";

/** What a span has so many of; `rows` are weeks below one another. */
export const MEASURES = ["rows", "weeks", "days"] as const;
export type Measure = (typeof MEASURES)[number];

/** Spans that come out alike, and what they have that no others have, where anything tells them apart. */
export interface SaidSpans {
  /** Their names, such as `May`; none where spans are meant by what they have alone. */
  readonly names: readonly string[];
  readonly shape?: { readonly measure: Measure; readonly counts: readonly number[] };
}

export interface YearFitFacts {
  readonly kind: "week" | "month" | "quarter";
  /** Left out: whatever the year. */
  readonly year?: number;
  readonly fitting: SaidSpans;
  readonly misfits: SaidSpans;
  /** Those that fit with another layout than the first. */
  readonly others: SaidSpans;
  /** How many spans there are of each. */
  readonly counts: Readonly<Record<"fitting" | "misfits" | "others", number>>;
}

/** One or two sentences. */
export function sayYearFit(facts: YearFitFacts): string {
  const { kind, year, others, counts } = facts;
  const ofYear = year === undefined ? "" : ` of ${year}`;
  if (counts.fitting === 0) return `It fits no ${kind}${ofYear}.`;
  const fits = counts.misfits === 0 ? `It fits every ${kind}${ofYear}` : sayParts(facts);
  if (counts.others === 0) return `${fits}.`;
  if (counts.others === counts.fitting && counts.misfits === 0)
    return `${fits}, with another layout than the first.`;
  const which = counts.others === counts.fitting ? "all that fit" : saySpans(others, facts);
  return `${fits}. ${ANOTHER_LAYOUT} is used for ${which}.`;
}

const ANOTHER_LAYOUT = "Another layout";

/** The fewer are named. */
function sayParts(facts: YearFitFacts): string {
  const { fitting, misfits, counts } = facts;
  return counts.misfits > counts.fitting
    ? `It fits only ${saySpans(fitting, facts)}`
    : `It fits, but for ${saySpans(misfits, facts)}`;
}

/** What stands below a small drawing; nothing where it takes the layout that is used for all that fit. */
export function sayMark(
  plan: { readonly fits: boolean; readonly used?: number },
  { others, fitting }: YearFitFacts["counts"],
): string {
  if (!plan.fits) return "Does not fit";
  return plan.used === 0 || others === fitting ? "" : ANOTHER_LAYOUT;
}

/** `Six rows`, `31 days`: what stands below the drawing of one shape. */
export function sayShape(counts: Readonly<Partial<Record<Measure, number>>>): string {
  const all = MEASURES.flatMap((measure) => {
    const count = counts[measure];
    return count === undefined ? [] : [`${numberWord(count)} ${measure}`];
  });
  return asSentence(all.join(", "));
}

/** `months of six rows: May and August 2027`; where nothing tells them apart and none is named, `some months`. */
function saySpans({ names, shape }: SaidSpans, { kind, year }: YearFitFacts): string {
  const spans = nounFor(2, kind);
  const ofShape = shape
    ? `${spans} of ${sayList(shape.counts.map(numberWord), "or")} ${shape.measure}`
    : "";
  const named = names.length === 0 ? "" : sayNames(names, kind, year);
  if (ofShape === "") return named === "" ? `some ${spans}` : named;
  return named === "" ? ofShape : `${ofShape}: ${named}`;
}

const MOST_NAMES = 6;

function sayNames(names: readonly string[], kind: YearFitFacts["kind"], year = 0): string {
  const more = names.length - MOST_NAMES;
  const shown = more > 1 ? names.slice(0, MOST_NAMES) : names;
  const rest = more > 1 ? [sayCount(more, `more ${kind}`)] : [];
  const list = sayList([...shown, ...rest], "and");
  if (kind === "month") return `${list} ${year}`;
  return `${kind === "week" ? `${nounFor(names.length, kind)} ` : ""}${list} of ${year}`;
}

/** Numbers of rows are said in words, as small ones are. */
function numberWord(number: number): string {
  return ["no", "one", "two", "three", "four", "five", "six"][number] ?? `${number}`;
}
