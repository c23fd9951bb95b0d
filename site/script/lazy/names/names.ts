/** The part that knows what days and months are called in every language: loaded when a list of them is opened or one is chosen. */
import { LANGUAGES } from "../../../../src/calendar/names/languages.ts";
import { REGION_NAMES } from "../../../../src/calendar/names/region-names.ts";
import { namesOf } from "../../../../src/calendar/names.ts";
import type { NamesPart } from "./names-part.ts";

const part: NamesPart = {
  namesOf,
  regions: REGION_NAMES,
  languages: LANGUAGES.map(({ tag, name }) => [tag, name]),
};

Object.assign(window, { spanbookNames: part });
