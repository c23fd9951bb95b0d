/** Reads `words.yaml`: groups of words that people use for one thing. */
import * as z from "zod";
import type { Issue } from "../../issue/facts/issue.ts";
import { type Reading, readingOf, type TextFile } from "../../issue/facts/reading.ts";
import { readYamlFile } from "../../source/front-matter/read-front-matter.ts";
import { checkSchema } from "../../source/schema/check-schema.ts";
import { textSchema } from "../../source/schema/value-schema.ts";
import { LIMITS } from "../limits.ts";
import type { WordGroups } from "../words.ts";
import { WORDS_KEYS } from "../words-keys.ts";

/** Signs alone are never searched for. */
const word = () =>
  textSchema({ longest: LIMITS.text }).refine((text) => /[\p{L}\p{N}]/u.test(text));

const WORDS_SHAPE = {
  owner: "words",
  keys: WORDS_KEYS.words,
  grammar: WORDS_KEYS,
  schema: z.strictObject({
    groups: z.array(z.array(word()).min(2).max(LIMITS.wordsAlike)).min(1).max(LIMITS.wordGroups),
  }),
} as const;

/** The groups, or every problem in the file. */
export function readWords(file: TextFile): Reading<WordGroups> {
  const yaml = readYamlFile(file);
  if (!yaml.ok) return yaml;
  const { tree, faults } = yaml.value;
  const issues: Issue[] = [...faults];
  const words = checkSchema(WORDS_SHAPE, tree, (issue) => issues.push(issue));
  return words ? readingOf(words.groups, issues) : { ok: false, issues };
}
