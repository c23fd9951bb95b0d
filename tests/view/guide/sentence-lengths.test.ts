/** What keepers read is soon read: short sentences in the guide, in messages and on papers. */
import { describe, expect, it } from "vitest";
import { sourceFiles } from "../../house/source-files.ts";
import { chapterSentences, meanWords, saidSentences, wordCount } from "./sentence-lengths.ts";

const MOST_IN_THE_MEAN = 20;
const MOST_WORDS = 35;

const chapters = [...sourceFiles(["site/guide"], [".md"])];
const words = [...sourceFiles(["src/issue/words"], [".ts"])];

describe("the sentences of a text", () => {
  it.each<[string, string, readonly string[]]>([
    ["two in a paragraph", "Take a ruler. Look at it!", ["Take a ruler", "Look at it"]],
    ["code as one word", "Write `page: {rows: 7}` here.", ["Write code here"]],
    ["no table", "| a | b |\n|---|---|\n| c | d |\n", []],
    [
      "no example, but a caption",
      "```yaml\ntitle: A\n```\n\n```figure bars\nA card.\n```",
      ["A card"],
    ],
    ["what introduces it", '---\nabout: "Of a month."\n---\n', ["Of a month"]],
  ])("are found: %s", (_, text, sentences) => {
    expect(chapterSentences(text)).toEqual(sentences);
  });

  it("are found in a file of words, whatever is filled in", () => {
    const source = `/** Not this one. */\nconst a = \`It has ${"$"}{count} and no more.\`;\n`;
    expect(saidSentences(source).map(wordCount)).toEqual([6]);
  });
});

it("are looked at in every chapter, and in most files of words", () => {
  expect(chapters.every(([, text]) => chapterSentences(text).length > 15)).toBe(true);
  expect(words.flatMap(([, text]) => saidSentences(text)).length).toBeGreaterThan(200);
});

describe.each([
  ...chapters.map(([path, text]) => [path, chapterSentences(text)] as const),
  ...words
    .map(([path, text]) => [path, saidSentences(text)] as const)
    .filter(([, sentences]) => sentences.length > 0),
])("%s", (_, sentences) => {
  it(`has at most ${MOST_IN_THE_MEAN} words a sentence in the mean, and ${MOST_WORDS} in any`, () => {
    expect(meanWords(sentences)).toBeLessThanOrEqual(MOST_IN_THE_MEAN);
    expect(sentences.filter((one) => wordCount(one) > MOST_WORDS)).toEqual([]);
  });
});
