/** Text as it stands in HTML, between tags or in a quoted attribute. */

/** Every character that could end the text is written by its name. */
export function htmlText(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    .replaceAll("'", "&#39;");
}

/** A sentence in which words between backticks are code, as HTML. */
export function codesHtml(text: string): string {
  return htmlText(text).replace(/`([^`]+)`/g, "<code>$1</code>");
}
