/** The words for what a key takes; they follow "`key` takes". */
import type { Form, ValueType } from "../facts/value-type.ts";
import { sayList } from "./say-count.ts";

/** `a whole number of steps from 1 to 400`. */
export function sayValueType(expected: ValueType): string {
  switch (expected.kind) {
    case "text":
      return `one line of text, at most ${expected.longest} characters`;
    case "whole":
      return `a whole number of ${expected.unit} from ${expected.min} to ${expected.max}`;
    case "millimetres":
      return `a number of millimetres from ${expected.min} to ${expected.max}`;
    case "share":
      return `a number above 0, at most ${expected.max}, with no more than two decimals`;
    case "choice":
      return sayList(expected.allowed, "or");
    case "form":
      return FORMS[expected.form](limitsOf(expected));
  }
}

interface Limits {
  readonly min: number;
  readonly max: number;
  readonly names: string;
}

type ValueForm = Extract<ValueType, { kind: "form" }>;

function limitsOf({ min = 0, max = 0, names = [] }: ValueForm): Limits {
  return { min, max, names: sayList(names, "or") };
}

const FORMS: Readonly<Record<Form, (limits: Limits) => string>> = {
  area: () => "an area, such as {rows: 7} or {fill: lines}",
  spread: () => "two areas: {left: {…}, right: {…}}",
  attempts: ({ max }) =>
    `a list of at most ${max} entries, each {page: {…}} or {spread: {left: {…}, right: {…}}}`,
  attempt: () => "{page: {…}} or {spread: {left: {…}, right: {…}}}",
  split: ({ min, max }) =>
    `a number from ${min} to ${max}, or keys such as {count: 3, gap: 1} or {tracks: [{steps: 4}, {share: 1}]}`,
  tracks: () => "a list with at least one track, such as [{steps: 4}, {share: 1}]",
  track: () => "the keys of a track, such as {fill: lines} or {share: 1}",
  gap: ({ min, max }) => `a whole number of steps from ${min} to ${max}, or {min: 1, max: 2}`,
  margin: ({ min, max }) =>
    `a whole number of steps from ${min} to ${max}, or steps by side: {top: 1, inner: 2}`,
  leftover: ({ names }) => `${names}, or the label of one of the tracks`,
  labels: () => "a list of labels, such as [Mon, Tue, Wed]",
  tags: ({ max }) => `a list of at most ${max} words, such as [plan, harvest]`,
  paper: ({ min, max, names }) =>
    `${names}, or its width and height in mm from ${min} to ${max}, such as [148, 210]`,
  pitch: ({ min, max }) =>
    `a number of millimetres from ${min} to ${max}, or one for each axis: {across: 5, down: 7}`,
  dots: ({ min, max }) =>
    `two whole numbers from ${min} to ${max}, across and down, such as [26, 38]`,
  "first-dot": ({ min, max }) =>
    `two numbers of millimetres from ${min} to ${max}, from the left and the top edge, such as [11.5, 12.5]`,
  count: ({ names }) => `${names}, or one for each axis: {across: edge-to-edge, down: dot-to-dot}`,
  "strip-entries": ({ max }) =>
    `a list of at most ${max} entries: file names without .md, such as [two-row-week, seed-list], or keys`,
  "strip-entry": () =>
    "the name of a pattern's file without .md, {pattern: seed-list, uses: 3} or {title: Thirds, split: {count: 3, gap: 1}}",
  "division-margin": ({ min, max }) =>
    `a whole number of steps from ${min} to ${max}, or steps at both ends: {left: 1, right: 2} across, {top: 1, bottom: 2} down`,
  day: () => "a day, such as 2027-03-01",
  days: () =>
    "a year, a month, a week or a day, such as 2027, 2027-03, 2027-W09 or 2027-03-05, or two of them with / between",
  slug: () => "the name of a file without .md, such as seed-list",
  "chosen-notebooks": () => "all, or a list of file names without .md, such as [a5, a6]",
  "chosen-patterns": () =>
    "all, or a list of file names without .md, such as [two-row-week, seed-list]",
  "chosen-strips": () => "all, or a list of file names without .md, such as [everyday, weeks]",
  "chosen-setups": () => "all, or a list of file names without .md, such as [march, april]",
  pack: () =>
    "the name of a folder inside the content folder, such as general, or spanbook/general",
  packs: ({ max }) =>
    `a list of at most ${max} names of folders inside the content folder, such as [general]`,
  "setup-entries": ({ max }) =>
    `a list of at most ${max} entries, such as [month-grid, {each: week, pages: [two-row-week, week-notes]}]`,
  "setup-entry": () =>
    "the name of a pattern, such as month-grid, or keys such as {pattern: day-notes, times: 2} or {each: week, pages: [two-row-week]}",
  address: () => "an address that begins with https:// or http://",
  calendar: () => "keys such as {region: GB, language: en}",
  region: () => "the code of a country or region, such as GB, or 001 for the world",
  language: () => "the code of a language, such as en or de-AT",
  "utc-offset": () => 'hours and minutes with a sign, such as "+00:00" or "-08:00"',
  repeat: ({ min, max, names }) => `a whole number from ${min} to ${max}, or one of ${names}`,
  "unit-count": ({ min, max, names }) => `a whole number from ${min} to ${max}, or one of ${names}`,
  "unit-number": () => "a whole number other than 0",
  "word-groups": ({ max }) =>
    `a list of at most ${max} groups of two words or more, such as [[to-do, task list], [budget, money]]`,
  printer: ({ min, max }) =>
    `numbers from ${min} to ${max} for the short and the long side of the paper, such as {x: 1.004, y: 0.998}`,
};
