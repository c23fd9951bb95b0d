/** The words of the three commands, and what is wrong with a call in one line. */
import { parseArgs } from "node:util";

export type Command = { readonly name: CommandName } & Options;

type CommandName = "build" | "check" | "start";

interface Options {
  readonly content?: string;
  readonly output?: string;
  readonly port?: number;
}

/** Which options each command takes. */
const OPTIONS = {
  build: ["content", "output"],
  check: ["content"],
  start: ["content", "port"],
} as const;

/** What each option is told. */
const TOLD = { content: "FOLDER", output: "FOLDER", port: "NUMBER" } as const;

type OptionName = keyof typeof TOLD;

/** The command that the words ask for, or one line that says why there is none. */
export function parseCommand(words: readonly string[]): Command | { readonly wrong: string } {
  const [name, ...rest] = words;
  if (name !== "build" && name !== "check" && name !== "start") {
    return { wrong: `There is no command \`${name ?? ""}\`: use build, check or start.` };
  }
  const options = parseOptions(name, rest);
  return "wrong" in options ? options : { name, ...options };
}

function parseOptions(
  command: CommandName,
  words: readonly string[],
): Options | { readonly wrong: string } {
  const known: readonly OptionName[] = OPTIONS[command];
  const { tokens } = parseArgs({
    args: [...words],
    options: { content: { type: "string" }, output: { type: "string" }, port: { type: "string" } },
    strict: false,
    tokens: true,
  });
  let found: Options = {};
  for (const token of tokens) {
    if (token.kind === "option-terminator") continue;
    const word = token.kind === "option" ? token.rawName : token.value;
    const name = known.find((one) => token.kind === "option" && one === token.name);
    if (token.kind !== "option" || name === undefined) {
      const takes = known.map((one) => `--${one}=${TOLD[one]}`).join(" and ");
      return { wrong: `\`${command}\` does not know \`${word}\`: it takes ${takes}.` };
    }
    const value = toldValue(name, token.value ?? "");
    if (value === undefined) {
      return { wrong: `\`${word}\` needs ${NEEDS[name]}: ${word}=${TOLD[name]}.` };
    }
    found = { ...found, [name]: value };
  }
  return found;
}

const NEEDS = {
  content: "a folder",
  output: "a folder",
  port: "a number from 1 to 65535",
} as const;

function toldValue(name: OptionName, written: string): string | number | undefined {
  if (name !== "port") return written === "" ? undefined : written;
  const port = /^[0-9]{1,5}$/.test(written) ? Number(written) : 0;
  return port >= 1 && port <= 65_535 ? port : undefined;
}
