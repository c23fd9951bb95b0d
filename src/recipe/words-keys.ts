/** The keys of `words.yaml`: for each what it takes and what it means. */
import type { Grammar } from "../source/schema/keys.ts";
import { LIMITS } from "./limits.ts";

export const WORDS_KEYS = {
  words: {
    groups: {
      expected: { kind: "form", form: "word-groups", max: LIMITS.wordGroups },
      meaning:
        "Words that people use for one thing: who searches for one of a group finds what is called by another.",
    },
  },
} as const satisfies Grammar;
