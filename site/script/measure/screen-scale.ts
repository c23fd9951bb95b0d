/** How large a millimetre is on this screen, told by a bank card that was held against it. */
import { BANK_CARD } from "../../../src/measure/bank-card.ts";
import type { Device } from "../device/device.ts";

/** CSS's own inch has 96 px (CSS Values and Units, section 6.2); screens do as they like. */
export const USUAL_PX_PER_MM = 96 / 25.4;

/** No screen that a card can be held against has fewer or more. */
const LIMITS = { min: 1.5, max: 14 } as const;

/** CSS pixels per millimetre, from the length in pixels that a card's edge covers. */
export function pxPerMm(edgePx: number, edge: "long" | "short"): number {
  return Math.min(Math.max(edgePx / BANK_CARD[edge], LIMITS.min), LIMITS.max);
}

/** The lengths in pixels between which a card's edge is looked for. */
export function edgeLimits(edge: "long" | "short"): { readonly min: number; readonly max: number } {
  return {
    min: Math.ceil(LIMITS.min * BANK_CARD[edge]),
    max: Math.floor(LIMITS.max * BANK_CARD[edge]),
  };
}

/** Keeps what was found together with the zoom that it was found at. */
export function keepScale(device: Device, scale: number, zoom: number): void {
  device.set("screen", `${scale.toFixed(4)} ${zoom}`);
}

/**
 * What was found, at the present zoom: pages that are zoomed in have fewer and larger CSS pixels.
 * None where nothing was kept, or what is kept is spoilt.
 */
export function keptScale(device: Device, zoom: number): number | undefined {
  const [scale = Number.NaN, then = Number.NaN] = (device.get("screen") ?? "")
    .split(" ")
    .map(Number);
  const now = (scale * then) / zoom;
  return now >= LIMITS.min / 8 && now <= LIMITS.max * 8 ? now : undefined;
}
