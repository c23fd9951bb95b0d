/** The keeper's strip as other pages see it: what lies on it, and one layout more. */
import {
  type AddedEntries,
  type AddedToStrip,
  addToStrip,
  namesOnStrip,
} from "../../../src/view/address/add-to-strip.ts";
import type { Device } from "./device.ts";
import { keptText, openEntry } from "./kept-entry.ts";

/** The names of patterns and divisions on either side. */
export function onMyStrip(device: Device): ReadonlySet<string> {
  return namesOnStrip(keptText(device, "strip") ?? "");
}

/** Adds to what is kept; a tab that shows the strip goes on with it. */
export function addToMyStrip(device: Device, added: AddedEntries): AddedToStrip {
  const before = keptText(device, "strip") ?? "";
  let now = before;
  const entry = openEntry(device, "strip", { text: () => now, isKept: true });
  const result = addToStrip(before, added);
  now = result.text;
  if (now !== before) entry.keep(before);
  return result;
}
