/** All faults of one YAML document, each told once: what only follows from another one is left out. */
import type { YAMLError } from "yaml";
import { type FaultAt, faultOf, type Looked } from "./yaml-error.ts";
import { indentFault } from "./yaml-indent.ts";

/** More would only bury the first ones. */
const MOST_FAULTS = 12;

/** The faults in the order in which the reader met them. */
export function faultsOf(errors: readonly YAMLError[], looked: Looked): readonly FaultAt[] {
  const own = errors.filter((error, index) => index === 0 || !isAftermath(error));
  return own.slice(0, MOST_FAULTS).flatMap((error, index): readonly FaultAt[] => {
    const far = tooFarIn(error, own.slice(0, index), looked);
    if (far) return far;
    const isTold = isTooFarIn(error, own) || followsDash(error, own.slice(0, index), looked);
    return isTold ? [] : [faultOf(error, looked)];
  });
}

/** Once a document has ended too early, everything behind it is called unexpected. */
function isAftermath({ message }: YAMLError): boolean {
  return message.includes("in YAML stream");
}

/**
 * A value that goes on into the key below it is told as two errors, at the value: the key stands further in than the one
 * above it. Where the line above is wrong itself, the key may well be right.
 */
function tooFarIn(
  error: YAMLError,
  before: readonly YAMLError[],
  { text }: Looked,
): readonly FaultAt[] | undefined {
  const [from, to] = error.pos;
  if (error.code !== "MULTILINE_IMPLICIT_KEY") return undefined;
  if (!before.some((other) => isNested(other) && other.pos[0] === from)) return undefined;
  const line = text.lastIndexOf("\n", from - 1) + 1;
  if (before.some((other) => isNested(other) && other.pos[0] >= line && other.pos[0] < from))
    return [];
  return [indentFault(text, text.lastIndexOf("\n", to) + 1)];
}

/** A dash that nobody expects is told again and again, as a key without a colon in its line. */
function followsDash(
  { code, message, pos }: YAMLError,
  before: readonly YAMLError[],
  { text }: Looked,
): boolean {
  if (code !== "MULTILINE_IMPLICIT_KEY" && !message.includes("map values")) return false;
  return before.some(
    (other) =>
      other.message.includes("block sequence") &&
      other.pos[0] <= pos[0] &&
      !text.slice(other.pos[0], pos[0]).includes("\n"),
  );
}

function isTooFarIn(error: YAMLError, all: readonly YAMLError[]): boolean {
  return (
    isNested(error) &&
    all.some((other) => other.code === "MULTILINE_IMPLICIT_KEY" && other.pos[0] === error.pos[0])
  );
}

function isNested({ code, message }: YAMLError): boolean {
  return code === "BLOCK_AS_IMPLICIT_KEY" && !message.includes("block sequence");
}
