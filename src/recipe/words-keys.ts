/** The keys of `words.yaml`: for each what it takes and what it means. */
import type { Grammar } from "../source/schema/keys.ts";
import { LIMITS } from "./limits.ts";

export const WORDS_KEYS = {
  words: {
    groups: {
      expected: { kind: "form", form: "word-groups", max: LIMITS.wordGroups },
      meaning: "Words that mean the same: a search for one word of a group finds the others, too.",
    },
  },
} as const satisfies Grammar;
