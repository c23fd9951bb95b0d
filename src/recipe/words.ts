/** What `words.yaml` says, checked. */

/** Words that people use for one thing; each group has at least two. */
export type WordGroups = readonly (readonly string[])[];
