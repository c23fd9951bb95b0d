/** Says beside what is kept whether this browser keeps it beyond the visit. */
import type { Device } from "../device/device.ts";
import { partOf } from "../ui/parts.ts";

/** The page has words for both, of which one is shown. */
export function showPersistence(page: ParentNode, device: Device): void {
  const isKept = device.persists();
  partOf(page, "kept").hidden = !isKept;
  partOf(page, "not-kept").hidden = isKept;
}
