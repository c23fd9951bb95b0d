/** A notebook behind the # of an address: as the fields that it would be typed into, the usual ones left out. */
import {
  type FieldName,
  fieldsOf,
  type NotebookFields,
  OWN_PAPER,
  USUAL_FIELDS,
} from "../fields/notebook-fields.ts";
import { readFields, type UnnamedNotebook } from "../fields/read-notebook-fields.ts";
import { type AddressEntries, type AddressReading, readAddress } from "./hash-params.ts";
import { addressOfNotebook, NOTEBOOK_KEYS_IN_ADDRESS } from "./notebook-label.ts";

/** Which fields stand behind each key. */
const FIELDS_OF_KEY = {
  paper: ["paper", "width", "height"],
  pitch: ["pitch", "pitchDown"],
  dots: ["dotsAcross", "dotsDown"],
  first: ["firstLeft", "firstTop"],
  count: ["count", "countDown"],
  ruling: ["ruling"],
  binding: ["binding"],
  middle: ["middle"],
  name: ["title"],
  file: ["slug"],
} as const satisfies Readonly<Record<Key, readonly FieldName[]>>;

type Key = (typeof NOTEBOOK_KEYS_IN_ADDRESS)[number];

export const NOTEBOOK_ADDRESS_KEYS: readonly Key[] = NOTEBOOK_KEYS_IN_ADDRESS;

/** Without these there is no notebook in an address. */
const NEEDED: readonly Key[] = ["paper", "pitch", "dots"];

/** The entries of a notebook. */
export function notebookEntries(notebook: UnnamedNotebook): AddressEntries {
  const fields = fieldsOf(notebook);
  const words: Readonly<Record<Key, string>> = {
    paper: fields.paper === OWN_PAPER ? writePair(fields.width, fields.height) : fields.paper,
    pitch: writePair(fields.pitch, fields.pitchDown),
    dots: writePair(fields.dotsAcross, fields.dotsDown),
    first: writePair(fields.firstLeft, fields.firstTop),
    count: writePair(fields.count, fields.countDown),
    ruling: fields.ruling,
    binding: fields.binding,
    middle: fields.middle,
    name: fields.title,
    file: fields.slug,
  };
  return NOTEBOOK_ADDRESS_KEYS.map((key) => [key, isUsual(key, words[key]) ? "" : words[key]]);
}

/** Of two fields the second one says nothing where it is the usual one. */
function isUsual(key: Key, word: string): boolean {
  return !NEEDED.includes(key) && word === USUAL_FIELDS[FIELDS_OF_KEY[key][0]];
}

/** The notebook of an address's values; nothing where they name none of its keys. */
export function readNotebookEntries(
  values: ReadonlyMap<string, string>,
): AddressReading<UnnamedNotebook | undefined> {
  if (!NOTEBOOK_ADDRESS_KEYS.some((key) => values.has(key))) return { ok: true, value: undefined };
  const missing = NEEDED.find((key) => !values.has(key));
  if (missing) return { ok: false, issue: { kind: "missing-key", key: missing } };
  const reading = readFields(fieldsIn(values));
  if (reading.ok) return reading;
  const [field] = reading.issues;
  const key = NOTEBOOK_ADDRESS_KEYS.find((each) => isFieldOf(each, field?.field)) ?? "paper";
  return field
    ? { ok: false, issue: { kind: "bad-value", key, field } }
    : { ok: false, issue: { kind: "missing-key", key } };
}

/** The notebook of an address, whatever else that says; nothing where it has none, or one that is spoilt. */
export function readNotebookAddress(hash: string): UnnamedNotebook | undefined {
  const address = readAddress(`#v=1&${addressOfNotebook(hash)}`, NOTEBOOK_ADDRESS_KEYS);
  const notebook = address.ok ? readNotebookEntries(address.value) : address;
  return notebook.ok ? notebook.value : undefined;
}

function isFieldOf(key: Key, field: FieldName | undefined): boolean {
  const fields: readonly FieldName[] = FIELDS_OF_KEY[key];
  return field !== undefined && fields.includes(field);
}

function fieldsIn(values: ReadonlyMap<string, string>): NotebookFields {
  const given = NOTEBOOK_ADDRESS_KEYS.flatMap((key): readonly [FieldName, string][] => {
    const word = values.get(key);
    if (word === undefined) return [];
    if (key === "paper" && !word.includes(",")) return [["paper", word === OWN_PAPER ? "" : word]];
    if (key === "paper") return [["paper", OWN_PAPER], ...pairOf("width", "height", word)];
    const [one, other]: readonly [FieldName, FieldName?] = FIELDS_OF_KEY[key];
    return other ? pairOf(one, other, word) : [[one, word]];
  });
  return { ...USUAL_FIELDS, ...Object.fromEntries(given) };
}

function pairOf(one: FieldName, other: FieldName, word: string): [FieldName, string][] {
  const [first, second] = readPair(word);
  return [
    [one, first],
    [other, second],
  ];
}

/** The pair as one word. An empty second value says the same as the first. */
export function writePair(across: string, down: string): string {
  return down === "" ? across : `${across},${down}`;
}

/** The pair of a word; more than two values stay in the second, where no field takes them. */
export function readPair(word: string): readonly [across: string, down: string] {
  const at = word.indexOf(",");
  return at < 0 ? [word, ""] : [word.slice(0, at), word.slice(at + 1)];
}
