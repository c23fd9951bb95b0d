/** The words for the usual slips in writing a number: quotation marks, a unit, a comma. */
import type { Found } from "../facts/shape-issue.ts";
import type { ValueType } from "../facts/value-type.ts";
import { sayCode } from "./say-code.ts";

/** Is it a number between quotation marks, where a number is wanted? */
export function isQuotedNumber(found: Found, expected: ValueType): boolean {
  if (found.kind !== "scalar" || !found.isText || !takesNumber(expected)) return false;
  return found.source.trim() !== "" && Number.isFinite(Number(found.source));
}

/** What to do about the slip, as one sentence; nothing where none is seen. */
export function sayNumberSlip(found: Found, expected: ValueType): string {
  if (found.kind === "list") return takesPair(expected) ? listWords(found.count, expected) : "";
  if (found.kind !== "scalar" || !takesNumber(expected)) return "";
  if (isQuotedNumber(found, expected) || CURLY.test(found.source))
    return "A number is written without quotation marks.";
  const [, one, other] = (takesPair(expected) && found.source.match(PAIR)) || [];
  if (one !== undefined) return `Did you mean ${sayCode(`[${one}, ${other}]`)}?`;
  const [, number, unit = ""] = found.source.match(NUMBER) ?? [];
  if (number === undefined) return "";
  const plain = number.replace(",", ".");
  if (unit !== "") return `Write the number alone: ${sayCode(plain)}.`;
  return plain === number || !takesDecimals(expected)
    ? ""
    : `Decimals stand behind a point: ${sayCode(plain)}.`;
}

/** A number, and a unit or a mark of the end behind it. */
const NUMBER = /^(\d+(?:[.,]\d+)?)\s*(\p{L}*|[,;])$/u;

/** Quotation marks of print, which mean nothing to YAML. */
const CURLY = /^[“”„‘’«»]\s*\d+(?:\.\d+)?\s*[“”„‘’«»]$/;

const PAIR = /^(\d+(?:\.\d+)?)(?:,? +|\s*[x×]\s*)(\d+(?:\.\d+)?)$/i;

function listWords(count: number, expected: ValueType): string {
  if (count === 1) return "It takes two numbers with a comma between them.";
  return count === 4 && takesDecimals(expected) ? "Decimals stand behind a point: `11.5`." : "";
}

const WITH_NUMBERS = ["split", "gap", "margin", "division-margin", "dots"];
const WITH_DECIMALS = ["paper", "pitch", "first-dot", "printer"];

function takesNumber(expected: ValueType): boolean {
  if (expected.kind === "form")
    return WITH_NUMBERS.includes(expected.form) || takesDecimals(expected);
  return expected.kind === "whole" || takesDecimals(expected);
}

function takesDecimals(expected: ValueType): boolean {
  if (expected.kind === "form") return WITH_DECIMALS.includes(expected.form);
  return expected.kind === "share" || expected.kind === "millimetres";
}

/** Two numbers in brackets, which become four where a comma stands before the decimals. */
function takesPair(expected: ValueType): boolean {
  return expected.kind === "form" && ["paper", "dots", "first-dot"].includes(expected.form);
}
