/** Sentences of the guide and of the words folder, and how many words each has. */
import markdownIt from "markdown-it";

/** Where one sentence ends and the next begins; what follows a colon or a semicolon belongs to it. */
const END = /[.!?…](?:[”’)]*)(?:\s+|$)/;

/** The sentences of a chapter: paragraphs, entries of lists, captions and what introduces it; no code, no table. */
export function chapterSentences(text: string): readonly string[] {
  const [, head = "", body = ""] = text.match(/^---\n([\s\S]*?)\n---\n([\s\S]*)$/) ?? [
    "",
    "",
    text,
  ];
  const about = head.match(/^about: "?(.*?)"?$/m)?.[1] ?? "";
  const tokens = markdownIt({ html: false }).parse(body, {});
  let inTable = false;
  const blocks = tokens.flatMap((token) => {
    if (token.type === "table_open") inTable = true;
    if (token.type === "table_close") inTable = false;
    if (token.type === "fence") return token.info.startsWith("figure") ? [token.content] : [];
    if (token.type !== "inline" || inTable) return [];
    const words = (token.children ?? []).map(({ type, content }) =>
      type === "code_inline" ? "code" : type === "softbreak" ? " " : content,
    );
    return [words.join("")];
  });
  return sentencesOf([about, ...blocks]);
}

/** The sentences that a file of words can say: whatever it fills in counts as one word. */
export function saidSentences(source: string): readonly string[] {
  const code = source.replace(/^\/\*\*[\s\S]*?\*\/|^\s*\/\*\*.*\*\/$|^import [\s\S]*?;$/gm, "");
  const texts = [...code.matchAll(/"((?:[^"\\\n]|\\.)*)"|`((?:[^`\\]|\\.)*)`/g)].map(
    ([, quoted, template]) =>
      (quoted ?? template ?? "")
        .replace(/\\`[^`]*\\`|`[^`]*`/g, "code")
        .replace(/\$\{[^}]*\}/g, "one"),
  );
  return sentencesOf(texts.filter((text) => /\w \w.*\.$/.test(text)));
}

/** How many of its words have a letter or a digit. */
export function wordCount(sentence: string): number {
  return sentence.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
}

/** How many words a sentence has in the mean; none where there is no sentence. */
export function meanWords(sentences: readonly string[]): number {
  const words = sentences.reduce((sum, one) => sum + wordCount(one), 0);
  return words / Math.max(1, sentences.length);
}

function sentencesOf(blocks: readonly string[]): readonly string[] {
  return blocks.flatMap((block) => block.split(END)).filter((sentence) => wordCount(sentence) > 0);
}
