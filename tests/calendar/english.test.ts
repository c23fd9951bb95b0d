/** English names are kept apart from the table of all languages: both are the same. */
import { expect, it } from "vitest";
import { ENGLISH } from "../../src/calendar/english.ts";
import { namesOf } from "../../src/calendar/names.ts";

it("English is English", () => {
  expect(ENGLISH).toEqual(namesOf("en"));
});
