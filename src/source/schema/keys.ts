/** The keys that a group may have: what each takes and what it means. The check and the reference both read them. */
import { OWNERS, type Owner } from "../../issue/facts/shape-issue.ts";
import type { ValueType } from "../../issue/facts/value-type.ts";

export interface KeyEntry {
  readonly expected: ValueType;
  /** One or two plain sentences for the reference. */
  readonly meaning: string;
}

export type Keys = Readonly<Record<string, KeyEntry>>;

/** All groups of one kind of file. */
export type Grammar = Readonly<Partial<Record<Owner, Keys>>>;

/** Whose key it is, if another group of the same file knows it. */
export function ownerOf(key: string, grammar: Grammar, except: Owner): Owner | undefined {
  return OWNERS.find((owner) => owner !== except && Object.hasOwn(grammar[owner] ?? {}, key));
}
