/** The keys that a set-up has behind the # of an address, beside its notebook and its days. */

/** Each says one field of the set-up's form. */
export const SETUP_FIELD_KEYS = [
  "from",
  "fill",
  "lanes",
  "make",
  "width",
  "setup",
  "setupfile",
] as const;

/** With its pages, and layouts that come along. */
export const SETUP_ADDRESS_KEYS = [...SETUP_FIELD_KEYS, "pages", "own"] as const;
