/** Text made short enough for an address: deflated, and written in letters that an address may hold. */
import { deflateSync, inflateSync, strFromU8, strToU8 } from "fflate";

/** A text that says it is longer than this is none that was packed here. */
const MOST_BYTES = 256 * 1024;

/** The text in the letters of base64url (RFC 4648, section 5), without padding. */
export function packText(text: string): string {
  const bytes = deflateSync(strToU8(text), { level: 9 });
  return btoa(strFromU8(bytes, true)).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

/** The text, or none where the letters are not what was packed. */
export function unpackText(packed: string): string | undefined {
  if (!/^[A-Za-z0-9_-]*$/.test(packed)) return undefined;
  try {
    const letters = atob(packed.replaceAll("-", "+").replaceAll("_", "/"));
    const bytes = inflateSync(strToU8(letters, true), { out: new Uint8Array(MOST_BYTES + 1) });
    if (bytes.length > MOST_BYTES) return undefined;
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}
