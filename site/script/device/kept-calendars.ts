/** Calendar files that the keeper wants to find again on this device, under one name: none goes into an address, a link or a zip. */
import type { Device } from "./device.ts";

export interface KeptCalendar {
  readonly name: string;
  /** The file with its days alone. */
  readonly text: string;
}

/** Those that are kept, in their order; none where what is kept cannot be read. */
export function keptCalendars(device: Device): readonly KeptCalendar[] {
  try {
    const kept: unknown = JSON.parse(device.get("calendars") ?? "[]");
    return Array.isArray(kept) ? kept.filter(isKept) : [];
  } catch {
    return [];
  }
}

/** In the place of those before; where there are none, nothing is kept. */
export function keepCalendars(device: Device, files: readonly KeptCalendar[]): void {
  if (files.length === 0) device.remove("calendars");
  else device.set("calendars", JSON.stringify(files));
}

function isKept(one: unknown): one is KeptCalendar {
  if (typeof one !== "object" || one === null) return false;
  return (
    typeof Reflect.get(one, "name") === "string" && typeof Reflect.get(one, "text") === "string"
  );
}
