/** What a page keeps behind the # of its address: a version, then keys with their values. */
import type { AddressIssue } from "../../issue/facts/address-issue.ts";

/** Changes when an old address would be read as something else. */
export const ADDRESS_VERSION = 1;

/** Longer addresses are cut off on their way by some programs. */
export const LONGEST_ADDRESS = 16_000;

/** Keys with values that are not empty, in their order. */
export type AddressEntries = readonly (readonly [key: string, value: string])[];

export type AddressReading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly issue: AddressIssue };

/** The address's part from # on: `#v=1&paper=A5&dots=26,38`. */
export function writeAddress(entries: AddressEntries): string {
  const pairs = entries.filter(([, value]) => value !== "");
  return `#${[["v", `${ADDRESS_VERSION}`] as const, ...pairs]
    .map(([key, value]) => `${key}=${encoded(value)}`)
    .join("&")}`;
}

/** Signs that may stand in an address as they are are left alone, so that it can be read. */
function encoded(value: string): string {
  return encodeURIComponent(value).replace(/%2C/g, ",").replace(/%3A/g, ":").replace(/%20/g, "+");
}

/** The values by key, of the known keys alone. No part, or a place on the page such as `#content`, holds none. */
export function readAddress(
  hash: string,
  known: readonly string[],
  longest = LONGEST_ADDRESS,
): AddressReading<ReadonlyMap<string, string>> {
  const values = new Map<string, string>();
  const text = hash.replace(/^#/, "");
  if (text === "" || /^[a-z][a-z0-9-]*$/i.test(text)) return { ok: true, value: values };
  const failed = (issue: AddressIssue) => ({ ok: false, issue }) as const;
  if (text.length > longest) return failed({ kind: "too-long", limit: longest });
  for (const part of text.split("&")) {
    const [, key, value] = PART.exec(part) ?? [];
    const plain = value === undefined ? undefined : decoded(value);
    if (key === undefined || plain === undefined)
      return failed({ kind: "garbled", part: shortened(part) });
    if (values.has(key)) return failed({ kind: "repeated-key", key });
    values.set(key, plain);
  }
  const version = values.get("v");
  if (version === undefined) return failed({ kind: "missing-key", key: "v" });
  if (version !== `${ADDRESS_VERSION}`)
    return failed({ kind: "other-version", version: shortened(version), known: ADDRESS_VERSION });
  values.delete("v");
  const strange = [...values.keys()].find((key) => !known.includes(key));
  if (strange !== undefined) return failed({ kind: "unknown-key", key: strange });
  return { ok: true, value: values };
}

const PART = /^([a-z]{1,12})=([^#]*)$/;
const LONGEST_PART = 40;

/** Text from its percent escapes; none where they make no text. */
function decoded(value: string): string | undefined {
  try {
    return decodeURIComponent(value.replaceAll("+", " "));
  } catch {
    return undefined;
  }
}

function shortened(part: string): string {
  const characters = [...part.slice(0, 2 * LONGEST_PART)];
  return characters.length <= LONGEST_PART
    ? part
    : `${characters.slice(0, LONGEST_PART).join("")}…`;
}
