/** What a page refers to, read off its text with a parser of its own. */

/** Every address in `href`, `src` and `download`-less links, unescaped; ids and names that can be linked to. */
export interface PageParts {
  readonly addresses: readonly string[];
  readonly ids: ReadonlySet<string>;
}

/** Attributes of start tags; pages are ours, so values are always in double quotes. */
export function partsOf(html: string): PageParts {
  const values = (name: string) =>
    [...html.matchAll(new RegExp(`<[a-zA-Z][^>]*?\\s${name}="([^"]*)"`, "g"))].map(([, value]) =>
      withoutEscapes(value ?? ""),
    );
  return { addresses: [...values("href"), ...values("src")], ids: new Set(values("id")) };
}

function withoutEscapes(text: string): string {
  return text.replaceAll("&quot;", '"').replaceAll("&#39;", "'").replaceAll("&amp;", "&");
}
