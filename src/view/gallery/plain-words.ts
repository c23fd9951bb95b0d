/** Words as a search compares them: without case, accents and signs, and one for one thing and for several. */

/** Small letters and numbers, in their order. What an apostrophe joins is one word. */
export function plainWords(text: string): readonly string[] {
  const plain = text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  return plain.replace(/(?<=\p{L})['’](?=\p{L})/gu, "").match(/[\p{L}\p{N}]+/gu) ?? [];
}

/** `book` for `books`: in English, and harmless elsewhere, for both sides of a comparison are changed alike. */
export function stemOf(word: string): string {
  return word.length > 3 && /[^iosu]s$/.test(word) ? word.slice(0, -1) : word;
}

/** The plain words of a text, one for one thing and for several. */
export function stemsOf(text: string): readonly string[] {
  return plainWords(text).map(stemOf);
}
