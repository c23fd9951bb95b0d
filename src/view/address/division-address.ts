/** What the front page keeps behind its #: a notebook, and the division that is asked of it. */
import { type DivisionChoice, USUAL_DIVISION } from "../division/division.ts";
import { divisionFieldsOf, readDivisionFields } from "../fields/division-fields.ts";
import type { UnnamedNotebook } from "../fields/read-notebook-fields.ts";
import { type AddressReading, readAddress, writeAddress } from "./hash-params.ts";
import {
  NOTEBOOK_ADDRESS_KEYS,
  notebookEntries,
  readNotebookEntries,
  readPair,
  writePair,
} from "./notebook-address.ts";

const KEYS = ["axis", "parts", "gap", "margin"] as const;

/** A notebook and a division of it. */
export interface Asked {
  readonly notebook: UnnamedNotebook;
  readonly division: DivisionChoice;
}

/** The address's part from # on. */
export function writeDivisionAddress({ notebook, division }: Asked): string {
  const { axis, parts, gap, before, after } = divisionFieldsOf(division);
  return writeAddress([
    ...notebookEntries(notebook),
    ["axis", axis],
    ["parts", parts],
    ["gap", gap],
    ["margin", before === after && before === "0" ? "" : writePair(before, after)],
  ]);
}

/** What the address says; what it says nothing of is left out. */
export function readDivisionAddress(hash: string): AddressReading<Partial<Asked>> {
  const address = readAddress(hash, [...NOTEBOOK_ADDRESS_KEYS, ...KEYS]);
  if (!address.ok) return address;
  const { value: values } = address;
  const notebook = readNotebookEntries(values);
  if (!notebook.ok) return notebook;
  const said = notebook.value ? { notebook: notebook.value } : {};
  if (!KEYS.some((key) => values.has(key))) return { ok: true, value: said };
  const usual = divisionFieldsOf(USUAL_DIVISION);
  const [before, after] = readPair(values.get("margin") ?? "0,0");
  const reading = readDivisionFields({
    axis: values.get("axis") ?? usual.axis,
    parts: values.get("parts") ?? usual.parts,
    gap: values.get("gap") ?? usual.gap,
    before,
    after: after === "" ? before : after,
  });
  if (reading.ok) return { ok: true, value: { ...said, division: reading.value } };
  const [field] = reading.issues;
  const key = KEYS.find((one) => one === field?.field) ?? "margin";
  return {
    ok: false,
    issue: field ? { kind: "bad-value", key, field } : { kind: "missing-key", key },
  };
}
