/** What the strip page shows first: the strip and the notebook of its address, else those that are kept, else none on the book's first. */
import type { AddressIssue } from "../../../src/issue/facts/address-issue.ts";
import { readStripAddress, type SaidStrip } from "../../../src/view/address/strip-address.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import { NO_STRIP } from "../../../src/view/fields/strip-fields.ts";
import type { OwnLayout, StripQuestion } from "../../../src/view/strip/strip-result.ts";
import type { Device } from "../device/device.ts";
import { keptText } from "../device/kept-entry.ts";
import { firstNotebook } from "./keepers-notebook.ts";
import { joined } from "./own-layouts.ts";

export interface StripStart {
  readonly asked: StripQuestion;
  /** What is wrong with the address, where it cannot be read. */
  readonly issue?: AddressIssue;
  /** What is kept of that which the address shows something else for. */
  readonly kept: Partial<StripQuestion>;
  /** Layouts that the strip names and nobody here has. */
  readonly missing: readonly string[];
}

/** Layouts of the keeper's own: those that the address carries, and those that are kept here. */
export interface StartLayouts {
  readonly carried: readonly OwnLayout[];
  readonly kept: readonly OwnLayout[];
}

const NONE: StartLayouts = { carried: [], kept: [] };

/** The start for an address; a broken one counts as none. */
export function startStrip(
  hash: string,
  device: Device,
  catalogue: Catalogue,
  own: StartLayouts = NONE,
): StripStart {
  const kept = keptStrip(device, catalogue, own.kept);
  const names = namesWith(catalogue, joined(own.carried, own.kept));
  const address = readStripAddress(hash, names);
  const said: SaidStrip = address.ok ? address.value : {};
  const { missing = [] } = said.strip ? said : kept;
  return {
    asked: {
      notebook: said.notebook ?? kept.notebook ?? firstNotebook(device, catalogue),
      strip: said.strip ?? kept.strip ?? NO_STRIP,
      own: layoutsFor(said, kept, own),
    },
    ...(address.ok ? {} : { issue: address.issue }),
    kept: {
      ...(kept.notebook && isOther(kept.notebook, said.notebook) && { notebook: kept.notebook }),
      ...(kept.strip && isOther(kept.strip, said.strip) && { strip: kept.strip, own: own.kept }),
    },
    missing,
  };
}

/**
 * What an address carries goes before what is kept, but for the keeper's own strip: its layouts may have been changed
 * since the address was written.
 */
export function layoutsFor(
  said: SaidStrip,
  kept: SaidStrip,
  own: StartLayouts,
): readonly OwnLayout[] {
  const isMine = kept.strip !== undefined && !isOther(kept.strip, said.strip);
  return isMine ? joined(own.kept, own.carried) : joined(own.carried, own.kept);
}

/** The names that a strip may say here. */
export function namesWith({ carried }: Catalogue, own: readonly OwnLayout[]): ReadonlySet<string> {
  return own.length === 0 ? carried : new Set([...carried, ...own.map(({ slug }) => slug)]);
}

/** What is kept is read as carefully as an address; what is spoilt takes nothing else with it. */
export function keptStrip(
  device: Device,
  catalogue: Catalogue,
  own: readonly OwnLayout[],
): SaidStrip {
  const names = namesWith(catalogue, own);
  const [notebook, strip] = (["notebook", "strip"] as const).map((part) => {
    const reading = readStripAddress(keptText(device, part) ?? "", names);
    return reading.ok ? reading.value : {};
  });
  return {
    ...(notebook?.notebook && { notebook: notebook.notebook }),
    ...(strip?.strip && { strip: strip.strip }),
    ...(strip?.missing && { missing: strip.missing }),
  };
}

function isOther<Thing>(kept: Thing, said: Thing | undefined): boolean {
  return said !== undefined && JSON.stringify(kept) !== JSON.stringify(said);
}
