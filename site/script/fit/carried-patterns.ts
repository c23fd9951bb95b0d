/** The keeper's strip beside the cards of the patterns: which of them it carries, and one more for it. */
import type { AddedToStrip } from "../../../src/view/address/add-to-strip.ts";
import type { Device } from "../device/device.ts";
import { addToMyStrip, onMyStrip } from "../device/my-strip.ts";

export interface CarriedPatterns {
  /** Puts a pattern on both sides. */
  add(slug: string): AddedToStrip;
  /** Tells the names of what it carries, now and whenever a tab adds to it. */
  subscribe(show: (carried: ReadonlySet<string>) => void): void;
}

/** As it is kept on the device. */
export function openCarried(device: Device): CarriedPatterns {
  const listeners: ((carried: ReadonlySet<string>) => void)[] = [];
  const tell = () => {
    for (const show of listeners) show(onMyStrip(device));
  };
  device.subscribe("strip", tell);
  return {
    add: (slug) => {
      const result = addToMyStrip(device, { across: slug, down: slug });
      tell();
      return result;
    },
    subscribe: (show) => {
      listeners.push(show);
      show(onMyStrip(device));
    },
  };
}
