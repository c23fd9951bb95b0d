/** A dated pattern as its author writes it, as plain data: what stands in the front matter, key by key. */
import type { SpanName } from "./rata-die.ts";

export const UNIT_WORDS = ["days", "weeks", "months", "quarters", "weekdays"] as const;
export type UnitWord = (typeof UNIT_WORDS)[number];

export interface WrittenSelection {
  readonly from?: number;
  readonly to?: number;
  readonly least?: number;
}

export interface WrittenArea {
  readonly label?: string;
  readonly margin?: Readonly<Record<string, number>>;
  readonly fill?: string;
  readonly every?: number;
  readonly columns?: WrittenSplit;
  readonly rows?: WrittenSplit;
}

export interface WrittenTrack extends WrittenArea, WrittenSelection {
  readonly steps?: number;
  readonly share?: number;
  readonly same?: string;
  readonly min?: number;
  readonly max?: number;
  readonly repeat?: number | UnitWord;
}

export interface WrittenSplit extends WrittenSelection {
  readonly count?: number | UnitWord;
  readonly each?: WrittenTrack;
  readonly labels?: readonly string[];
  readonly tracks?: readonly WrittenTrack[];
  readonly gap?: { readonly min: number; readonly max: number };
  readonly leftover?: string;
}

export interface WrittenAttempt {
  readonly page?: WrittenArea;
  readonly spread?: { readonly left: WrittenArea; readonly right: WrittenArea };
}

export interface WrittenPattern extends WrittenAttempt {
  readonly dates: SpanName;
  readonly outside?: "pale" | "blank";
  readonly otherwise?: readonly WrittenAttempt[];
}

/** The file: JSON is YAML, too. */
export function fileOf(pattern: WrittenPattern): { readonly path: string; readonly text: string } {
  const keys = { title: "Tried", purpose: "page", ...pattern };
  const lines = Object.entries(keys).map(([key, value]) => `${key}: ${JSON.stringify(value)}`);
  return { path: "patterns/tried.md", text: `---\n${lines.join("\n")}\n---\n` };
}
