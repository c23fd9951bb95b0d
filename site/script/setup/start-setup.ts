/** What the set-up page shows first: what its address says, else what is kept on the device, else the next month, empty. */
import { isBeyondYears, spanBeside, spanHolding } from "../../../src/calendar/span.ts";
import type { AddressIssue } from "../../../src/issue/facts/address-issue.ts";
import { type AskedSetup, readSetupAddress } from "../../../src/view/address/setup-address.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import { blankSetup, type SetupChoice } from "../../../src/view/fields/setup-fields.ts";
import { keepersNotebook } from "../app/keepers-notebook.ts";
import { deviceToday } from "../app/today.ts";
import type { Device } from "../device/device.ts";
import { keptText } from "../device/kept-entry.ts";

export interface SetupStart {
  readonly asked: AskedSetup;
  /** What is wrong with the address, where it cannot be read. */
  readonly issue?: AddressIssue;
  /** A layout that the address adds. */
  readonly add?: string;
  /** The set-up that is kept, where the address shows another one. */
  readonly kept?: SetupChoice;
}

/** The start for an address; a broken one counts as none. */
export function startSetup(hash: string, device: Device, catalogue: Catalogue): SetupStart {
  const address = readSetupAddress(hash);
  const said = address.ok ? address.value : {};
  const kept = keptSetup(device);
  const setup = said.setup ?? kept?.setup ?? blankSetup(nextMonth(catalogue));
  const isOther = said.setup !== undefined && kept?.setup !== undefined;
  return {
    asked: {
      notebook: said.notebook ?? keepersNotebook(device, catalogue),
      setup,
      calendar: said.calendar ?? kept?.calendar ?? {},
    },
    ...(address.ok ? {} : { issue: address.issue }),
    ...(said.add !== undefined && { add: said.add }),
    ...(isOther && JSON.stringify(kept.setup) !== JSON.stringify(setup) && { kept: kept.setup }),
  };
}

/** What is kept is read as carefully as an address. */
function keptSetup(device: Device) {
  const reading = readSetupAddress(keptText(device, "setup") ?? "");
  return reading.ok ? reading.value : undefined;
}

/** By the device's clock; where that shows the last month of the calendar, that month. */
function nextMonth({ when: { rule } }: Catalogue) {
  const today = deviceToday();
  const now = spanHolding("month", today, rule);
  if (isBeyondYears(now)) return { from: today, to: today };
  const next = spanBeside(now, 1, rule);
  const { from, to } = isBeyondYears(next) ? now : next;
  return { from, to };
}
