/** Reads a label: plain text, or in a dated pattern text with placeholders. */
import { takeText } from "../../source/schema/take-value.ts";
import type { SourceNode } from "../../source/tree.ts";
import { type LabelPart, PLACEHOLDERS, readLabelTemplate } from "../label-template.ts";
import { RECIPE_KEYS } from "../recipe-keys.ts";
import type { ReadContext } from "./read-context.ts";

export interface Label {
  /** As it is written. */
  readonly label: string;
  readonly labelParts?: readonly LabelPart[];
}

/** The label behind a key, or one entry of the list behind `labels`. */
export function readLabel(
  key: "label" | "labels",
  node: SourceNode,
  { note, span }: ReadContext,
): Label {
  const { expected } = RECIPE_KEYS.area.label;
  const meant = span && placeholderMap(node);
  const label = takeText({
    key,
    node,
    expected,
    note,
    meant,
    ...(key === "labels" && { isEntry: true }),
  });
  if (!span) return { label };
  const { parts, faults } = readLabelTemplate(label);
  for (const fault of faults) {
    const about = { about: "rule", at: node.at } as const;
    if (fault.kind === "unclosed-placeholder") note({ ...about, kind: fault.kind, label });
    else {
      const { kind, written, nearest } = fault;
      const meant = nearest === undefined ? {} : { nearest };
      note({ ...about, kind, written, ...meant, placeholders: PLACEHOLDERS });
    }
  }
  const labelParts = parts.map((part) =>
    part.kind === "placeholder" && part.name === "moon" ? { ...part, at: node.at } : part,
  );
  return { label, labelParts };
}

/** Braces without quotes are a map to YAML: `label: {day}` was meant as a text. */
function placeholderMap(node: SourceNode): string | undefined {
  if (node.kind !== "map") return undefined;
  const [entry, ...more] = node.entries;
  const isPlaceholder = PLACEHOLDERS.some((name) => name === entry?.key);
  return isPlaceholder && more.length === 0 ? `"{${entry?.key}}"` : undefined;
}
