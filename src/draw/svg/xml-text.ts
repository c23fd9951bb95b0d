/** Text as XML can hold it: what it forbids is taken out before it is written. */

/** Characters outside of XML 1.0's `Char`, apart from lone surrogates (W3C, XML 1.0, 2.2). */
const FORBIDDEN =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to find
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g;
const LONE_SURROGATE = /\p{Surrogate}/gu;
/** White space of every kind; a no-break space would be written as an entity that XML lacks. */
const SPACE = /\s+/gu;
/** Marks that turn the direction of what follows: they could run out of their own text. */
const DIRECTION = /[\u202a-\u202e\u2066-\u2069]/g;

/** One line of text, well-formed whatever it was; a lone surrogate becomes U+FFFD. */
export function xmlText(text: string): string {
  return xmlLines(text).replace(SPACE, " ").trim();
}

/** The same, with line ends and other white space as they are. */
export function xmlLines(text: string): string {
  return text.replace(FORBIDDEN, "").replace(DIRECTION, "").replace(LONE_SURROGATE, "\ufffd");
}

/** A name for `id`: letters, digits, dots, dashes and underscores, as slugs have them. */
export function xmlId(text: string): string {
  const plain = text.replace(/[^A-Za-z0-9._-]+/g, "-");
  return /^[A-Za-z_]/.test(plain) ? plain : `d-${plain}`;
}

const ESCAPES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
};

const SPECIAL = /[&<>"]/;
const SPECIALS = /[&<>"]/g;

/** As XML writes it, in an attribute and between two tags alike. */
export function escapedXml(text: string): string {
  return SPECIAL.test(text) ? text.replace(SPECIALS, (one) => ESCAPES[one] ?? one) : text;
}
