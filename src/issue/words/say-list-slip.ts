/** The words for a list that was written without its brackets. */
import type { Form } from "../facts/value-type.ts";
import { sayCode } from "./say-code.ts";

/** Does a list stand in this form, for which people write its entries alone? */
export function isList(form: Form): boolean {
  return form === "labels" || form === "tags" || isNames(form);
}

/** The list that was meant, as a question; nothing where it would be refused itself. */
export function sayListSlip(source: string, form: Form): string {
  const text = source.trim();
  if (form.startsWith("chosen-") && /^(?:all|\*)$/i.test(text)) return "Did you mean `all`?";
  const inner = text.match(/^\((.*)\)$/)?.[1] ?? text;
  const entries = inner
    .split(isNames(form) ? /[,;\s]+/ : /[,;]\s*/)
    .filter((entry) => entry !== "");
  const rule = isNames(form) ? NAME : PLAIN;
  const isTaken = entries.length > 0 && entries.every((entry) => rule.test(entry));
  return isTaken ? `Did you mean ${sayCode(`[${entries.join(", ")}]`)}?` : "";
}

function isNames(form: Form): boolean {
  return LISTS_OF_NAMES.includes(form) || form.startsWith("chosen-");
}

const LISTS_OF_NAMES: readonly Form[] = ["strip-entries", "setup-entries", "packs"];

/** Names of files and folders. */
const NAME = /^[a-z0-9][a-z0-9-]*$/;

/** What YAML takes between brackets as it stands. */
const PLAIN = /^[\p{L}\p{N}](?:[^[\]{}:#\p{C}])*$/u;
