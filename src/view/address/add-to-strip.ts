/** Puts one more layout on a strip that is kept as an address: for pages that know neither the strip's patterns nor its reader. */
import { AXES, type Axis } from "../../measure/axis.ts";
import { STRIP_BOUNDS } from "../../recipe/strip-bounds.ts";
import type { FlowValue } from "../../source/front-matter/write-flow.ts";
import { readAddress, writeAddress } from "./hash-params.ts";
import { NOTEBOOK_KEYS_IN_ADDRESS } from "./notebook-label.ts";
import {
  KEYS_BESIDE_STRIP,
  nameIn,
  readList,
  STRIP_ADDRESS_KEYS,
  writeList,
} from "./strip-list.ts";

/** What is put on each side, as a strip's file has it. */
export type AddedEntries = Readonly<Partial<Record<Axis, FlowValue>>>;

export interface AddedToStrip {
  /** The strip as it is kept from now on; the old one where nothing could be added. */
  readonly text: string;
  readonly outcome: "added" | "there" | "full";
  /** How many layouts lie on it. */
  readonly count: number;
}

/** What was kept before is read without checks, which the strip's own page makes; what does not come apart is as none. */
export function addToStrip(kept: string, added: AddedEntries): AddedToStrip {
  const { lists, others } = partsOf(kept);
  const isThere = (axis: Axis) =>
    added[axis] === undefined || namesIn(lists[axis]).includes(nameIn(added[axis]) ?? "");
  const isFull = (axis: Axis) => lists[axis].length >= STRIP_BOUNDS.patterns;
  const missing = AXES.filter((axis) => !isThere(axis));
  const free = missing.filter((axis) => !isFull(axis));
  const onto = (axis: Axis) => [...lists[axis], ...(free.includes(axis) ? [added[axis]] : [])];
  const next = { across: onto("across"), down: onto("down") };
  return {
    text:
      free.length === 0
        ? kept
        : writeAddress([...AXES.map((axis) => [axis, writeList(next[axis])] as const), ...others]),
    outcome: free.length > 0 ? "added" : missing.length > 0 ? "full" : "there",
    count: new Set(AXES.flatMap((axis) => namesIn(next[axis]))).size,
  };
}

/** What lies on a kept strip, by name. */
export function namesOnStrip(kept: string): ReadonlySet<string> {
  const { lists } = partsOf(kept);
  return new Set(AXES.flatMap((axis) => namesIn(lists[axis])));
}

const KEYS = [...NOTEBOOK_KEYS_IN_ADDRESS, ...KEYS_BESIDE_STRIP, ...STRIP_ADDRESS_KEYS];
const OTHERS = ["dates", "lanes", "make", "width", "strip", "stripfile", "sfile", "own"] as const;

/** The lists of a kept strip, and what is said of it as a whole. Days beside a pattern are not its own. */
function partsOf(kept: string) {
  const reading = readAddress(kept, KEYS);
  const values: ReadonlyMap<string, string> = reading.ok ? reading.value : new Map();
  const listOf = (axis: Axis) => readList(values.get(axis) ?? "") ?? [];
  const others = OTHERS.flatMap((key) => {
    const word = key === "dates" && values.has("pattern") ? undefined : values.get(key);
    return word === undefined ? [] : [[key, word] as const];
  });
  return { lists: { across: listOf("across"), down: listOf("down") }, others };
}

function namesIn(entries: readonly unknown[]): readonly string[] {
  return entries.flatMap((entry) => nameIn(entry) ?? []);
}
