/** A strict reader of the little XML that the drawings use: anything that is not well-formed throws. */

export interface XmlElement {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly XmlElement[];
  readonly text: string;
}

const NAME = /[A-Za-z_][\w:.-]*/y;
const ATTRIBUTE = /\s+([A-Za-z_][\w:.-]*)="([^"<]*)"/y;
const TAG_END = /\s*(\/?)>/y;
const TEXT = /[^<]*/y;
const CLOSING = /<\/([A-Za-z_][\w:.-]*)\s*>/y;
const ENTITIES: ReadonlyMap<string, string> = new Map([
  ["amp", "&"],
  ["lt", "<"],
  ["gt", ">"],
  ["quot", '"'],
  ["apos", "'"],
]);
/** XML 1.0, 2.2: what a character may be. Read by code points, a lone surrogate is none of them. */
const CHARACTERS = /^[\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]*$/u;

/** The root element; only white space may follow it. */
export function parseXml(source: string): XmlElement {
  if (!CHARACTERS.test(source)) throw new Error("a character that XML forbids");
  let at = 0;
  const take = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at;
    const found = pattern.exec(source);
    if (found) at = pattern.lastIndex;
    return found;
  };
  const expected = (what: string): never => {
    throw new Error(`${what} expected at ${at}: ${source.slice(at, at + 60)}`);
  };
  const element = (): XmlElement => {
    if (source[at] !== "<") expected("an element");
    at += 1;
    const name = (take(NAME) ?? expected("a name"))[0];
    const attributes = new Map<string, string>();
    for (let found = take(ATTRIBUTE); found; found = take(ATTRIBUTE)) {
      const [, key = "", raw = ""] = found;
      if (attributes.has(key)) throw new Error(`${key} written twice on ${name}`);
      attributes.set(key, unescaped(raw));
    }
    const end = take(TAG_END) ?? expected("the end of a tag");
    if (end[1] === "/") return { name, attributes, children: [], text: "" };
    const children: XmlElement[] = [];
    let text = unescaped(take(TEXT)?.[0] ?? "");
    while (!source.startsWith("</", at)) {
      children.push(element());
      text += unescaped(take(TEXT)?.[0] ?? "");
    }
    const closing = take(CLOSING) ?? expected("a closing tag");
    if (closing[1] !== name) throw new Error(`${closing[1]} closes ${name}`);
    return { name, attributes, children, text };
  };
  const root = element();
  if (source.slice(at).trim() !== "") expected("the end");
  return root;
}

function unescaped(raw: string): string {
  const text = raw.replace(/&(\w+);/g, (whole, name: string) => {
    const character = ENTITIES.get(name);
    if (character === undefined) throw new Error(`${whole} is no entity of XML`);
    return character;
  });
  if (/&/.test(raw.replace(/&\w+;/g, ""))) throw new Error("an ampersand by itself");
  return text;
}

/** The element and all elements in it, in document order. */
export function allElements(element: XmlElement): readonly XmlElement[] {
  return [element, ...element.children.flatMap(allElements)];
}
