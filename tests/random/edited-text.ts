/** Texts after slips of whoever writes them: letters, numbers, words and lines put in, left out, doubled and moved. */
import type { Choices } from "./choices.ts";

/** Numbers beyond every limit, and what looks like one. */
const NUMBERS = [
  ...["0", "1", "-1", "2", "7", "13", "40", "200", "201", "400", "401", "10000", "1e9", "1e400"],
  ...["9007199254740993", "99999999999999999999999999", "-0", "0.001", "2.5", "0.1234567", "3,5"],
  ...[".inf", "-.inf", ".nan", "0x10", "0o17", "1_000", "+5", "٣", "½", "1e-400"],
] as const;

/** Signs of YAML, of HTML and of Unicode that slip in anywhere. */
const SIGNS = [
  ...["{", "}", "[", "]", ":", ": ", ",", "-", "- ", "---", "\n", "  ", "\t", '"', "'", "#", " # "],
  ...[
    "&a ",
    "*a",
    "!!x ",
    "<<: ",
    "? ",
    "| ",
    "> ",
    "%YAML 1.2\n",
    "\r",
    "\r\n",
    "\u0000",
    "\u0085",
  ],
  ...[
    "\u2028",
    "\ud800",
    "\udc00",
    "\u202e",
    "\ufeff",
    "é",
    "e\u0301",
    "ß",
    "İ",
    "👩‍🌾",
    "苗",
    "<script>",
  ],
  ...["\u200b", "\u00a0", "%", "\\", "\\x", "\\u12", "`", "@", "$&", "constructor", "__proto__"],
] as const;

/** The text after up to `most` slips; `words` are of the trade, in wrong places. */
export function edited(
  text: string,
  { choices, words, most = 6 }: { choices: Choices; words: readonly string[]; most?: number },
): string {
  const { one, below } = choices;
  const word = () => words[below(words.length)] ?? "";
  let now = text;
  for (let slips = below(most + 1); slips > 0; slips--) {
    const act = one(["number", "word", "line", "put", "cut", "replaced", "end"]);
    if (act === "number") now = withToken(now, choices, /-?\d[\d.]*/g, one(NUMBERS));
    else if (act === "word") now = withToken(now, choices, /[A-Za-z][\w-]*/g, word());
    else if (act === "line") now = withLine(now, choices);
    else if (act === "end") now = choices.isIn100(20) ? now.slice(0, below(now.length + 1)) : now;
    else {
      const at = below(now.length + 1);
      const put = act === "cut" ? "" : one([one(SIGNS), word(), one(NUMBERS), `\n${word()}: `]);
      const gone = act === "put" ? 0 : 1 + below(act === "cut" ? 30 : 6);
      now = now.slice(0, at) + put + now.slice(at + gone);
    }
  }
  return now;
}

/** Another word in the place of one of those that match. */
function withToken(text: string, { below }: Choices, tokens: RegExp, other: string): string {
  const found = [...text.matchAll(tokens)];
  const token = found[below(found.length)];
  if (!token) return text;
  return text.slice(0, token.index) + other + text.slice(token.index + token[0].length);
}

/** A line that is gone, there twice, somewhere else, or further in or out. */
function withLine(text: string, { below, one }: Choices): string {
  const lines = text.split("\n");
  const at = below(lines.length);
  const line = lines[at] ?? "";
  const act = one(["away", "twice", "elsewhere", "in", "out", "many"]);
  const copies = {
    away: [],
    twice: [line, line],
    elsewhere: [],
    in: [`  ${line}`],
    out: [line.replace(/^ {1,2}/, "")],
    many: Array.from({ length: 1 + below(40) }, () => line),
  };
  const rest = lines.toSpliced(at, 1, ...copies[act]);
  return (act === "elsewhere" ? rest.toSpliced(below(rest.length + 1), 0, line) : rest).join("\n");
}
