/** The words of the three commands, and what is wrong with a call in one line. */
import { parseArgs } from "node:util";

export type Command =
  | { readonly name: "build"; readonly content?: string; readonly output?: string }
  | { readonly name: "check" | "start"; readonly content?: string };

/** Which options each command takes. */
const OPTIONS = {
  build: ["content", "output"],
  check: ["content"],
  start: ["content"],
} as const;

/** The command that the words ask for, or one line that says why there is none. */
export function parseCommand(words: readonly string[]): Command | { readonly wrong: string } {
  const [name, ...rest] = words;
  if (name !== "build" && name !== "check" && name !== "start") {
    return { wrong: `There is no command \`${name ?? ""}\`: use build, check or start.` };
  }
  const options = parseOptions(name, rest);
  return "wrong" in options ? options : { name, ...options };
}

type Options = { readonly content?: string; readonly output?: string };

function parseOptions(
  name: keyof typeof OPTIONS,
  words: readonly string[],
): Options | { readonly wrong: string } {
  const known: readonly string[] = OPTIONS[name];
  const takes = known.map((option) => `--${option}=FOLDER`).join(" and ");
  const { tokens } = parseArgs({
    args: [...words],
    options: { content: { type: "string" }, output: { type: "string" } },
    strict: false,
    tokens: true,
  });
  const found: { content?: string; output?: string } = {};
  for (const token of tokens) {
    if (token.kind === "option-terminator") continue;
    const word = token.kind === "option" ? token.rawName : token.value;
    if (token.kind !== "option" || !known.includes(token.name)) {
      return { wrong: `\`${name}\` does not know \`${word}\`: it takes ${takes}.` };
    }
    if (!token.value) return { wrong: `\`${word}\` needs a folder: ${word}=FOLDER.` };
    if (token.name === "content") found.content = token.value;
    else found.output = token.value;
  }
  return found;
}
