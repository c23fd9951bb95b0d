/** How text is written behind a key so that YAML reads it back as it was. */

/** The text by itself where nothing in it means anything to YAML, else in double quotes; of one line. */
export function writeText(text: string): string {
  return PLAIN.test(text) && !NOTHING.test(text) ? text : JSON.stringify(text);
}

/** The same between braces or brackets, where a comma ends a text. */
export function writeFlowText(text: string): string {
  return text.includes(",") ? JSON.stringify(text) : writeText(text);
}

/** YAML's word for nothing. */
const NOTHING = /^null$/i;

/** Letters, figures and harmless signs, beginning and ending with a letter or a figure. */
const PLAIN = /^[\p{L}\p{N}](?:[\p{L}\p{N} ,.;×’()–-]*[\p{L}\p{N})])?$/u;
