/** What the strip page shows first: the strip and the notebook of its address, else those that are kept, else none on the book's first. */
import type { AddressIssue } from "../../../src/issue/facts/address-issue.ts";
import { type AskedStrip, readStripAddress } from "../../../src/view/address/strip-address.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import { NO_STRIP } from "../../../src/view/fields/strip-fields.ts";
import type { Device } from "../device/device.ts";
import { keptText } from "../device/kept-entry.ts";
import { firstNotebook } from "./keepers-notebook.ts";

export interface StripStart {
  readonly asked: AskedStrip;
  /** What is wrong with the address, where it cannot be read. */
  readonly issue?: AddressIssue;
  /** What is kept of that which the address shows something else for. */
  readonly kept: Partial<AskedStrip>;
}

/** The start for an address; a broken one counts as none. */
export function startStrip(hash: string, device: Device, catalogue: Catalogue): StripStart {
  const kept = keptStrip(device, catalogue);
  const address = readStripAddress(hash, catalogue.carried);
  const said = address.ok ? address.value : {};
  return {
    asked: {
      notebook: said.notebook ?? kept.notebook ?? firstNotebook(device, catalogue),
      strip: said.strip ?? kept.strip ?? NO_STRIP,
    },
    ...(address.ok ? {} : { issue: address.issue }),
    kept: {
      ...(kept.notebook && isOther(kept.notebook, said.notebook) && { notebook: kept.notebook }),
      ...(kept.strip && isOther(kept.strip, said.strip) && { strip: kept.strip }),
    },
  };
}

/** What is kept is read as carefully as an address; what is spoilt takes nothing else with it. */
function keptStrip(device: Device, { carried }: Catalogue): Partial<AskedStrip> {
  const kept = (part: keyof AskedStrip) => {
    const reading = readStripAddress(keptText(device, part) ?? "", carried);
    return reading.ok && reading.value[part] ? { [part]: reading.value[part] } : {};
  };
  return { ...kept("notebook"), ...kept("strip") };
}

function isOther<Thing>(kept: Thing, said: Thing | undefined): boolean {
  return said !== undefined && JSON.stringify(kept) !== JSON.stringify(said);
}
