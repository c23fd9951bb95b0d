/** Layouts of one's own that go along with a strip behind the # of an address, packed as they are written. */
import { isSlug } from "../../source/slug.ts";
import { readAddress } from "./hash-params.ts";
import { NOTEBOOK_ADDRESS_KEYS } from "./notebook-address.ts";
import { KEYS_BESIDE_STRIP, STRIP_ADDRESS_KEYS } from "./strip-list.ts";

/** A layout of one's own as an address carries it: its text packed, so that another device can read it. */
export interface PackedLayout {
  readonly slug: string;
  readonly packed: string;
}

/** `my-week:…,halves-of-mine:…` */
export function writeLayouts(layouts: readonly PackedLayout[]): string {
  return layouts.map(({ slug, packed }) => `${slug}:${packed}`).join(",");
}

const KEYS = [...NOTEBOOK_ADDRESS_KEYS, ...KEYS_BESIDE_STRIP, ...STRIP_ADDRESS_KEYS];

/** The layouts that an address carries, packed as they are; none where it cannot be read. */
export function layoutsInAddress(hash: string): readonly PackedLayout[] {
  const address = readAddress(hash, KEYS);
  const own = address.ok ? (address.value.get("own") ?? "") : "";
  return own.split(",").flatMap((word) => {
    const [, slug, packed] = OWN.exec(word) ?? [];
    return slug !== undefined && packed !== undefined && isSlug(slug) ? [{ slug, packed }] : [];
  });
}

const OWN = /^([^:]+):([A-Za-z0-9_-]+)$/;
