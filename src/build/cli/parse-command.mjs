/** The words of the commands: what they ask for, what is wrong with them in one line, and what begins. */
import { isIP } from "node:net";
import { parseArgs } from "node:util";

/** An option with nothing behind it. */
const FLAG = "";

/** Which options each command takes, and what stands behind each. */
const OPTIONS = {
  build: { content: "FOLDER", with: "FOLDER", output: "FOLDER" },
  check: { content: "FOLDER", with: "FOLDER", format: "lines", watch: FLAG },
  start: { content: "FOLDER", with: "FOLDER", port: "NUMBER", host: "ADDRESS" },
};

/** What `help` says; the commands in the order in which somebody needs them. */
export const HELP = `Spanbook: a pattern book for dot-grid notebooks that has already done the counting.

  new FOLDER   begins a book of your own in a new folder
  start        shows the book, and follows every change
  check        reads everything, and tells what is wrong
  build        puts the finished book into a folder

${Object.entries(OPTIONS)
  .map(([name, known]) => `${name.padEnd(5)} takes ${optionsOf(known)}.`)
  .join("\n")}`;

/** The one that may stand there several times. */
const REPEATED = "with";

/** TCP has no more ports (RFC 9293, 3.1: sixteen bits), and 0 stands for none. */
const LAST_PORT = 65_535;

/** Control characters: in a name they are a slip, not every tool can take them, and they move a terminal's cursor. */
const UNSEEN = /\p{Cc}/gu;

/** The command that the words ask for, or one line that says why there is none. */
export function parseCommand(words) {
  const [name, ...rest] = words;
  if (name === "help" || name === "--help" || name === "-h") return { name: "help" };
  if (name === "--version") return { name: "version" };
  if (name === "new") return parseNew(rest);
  if (!Object.hasOwn(OPTIONS, name ?? "")) {
    return { wrong: `There is no command \`${name ?? ""}\`: use new, start, check or build.` };
  }
  const options = parseOptions(name, rest);
  return "wrong" in options ? options : { name, ...options };
}

function parseNew(words) {
  const [folder] = words;
  if (words.length !== 1 || !folder || folder.startsWith("-")) {
    return {
      wrong: "`new` takes the name of a new folder and nothing else, such as `new my-book`.",
    };
  }
  const wrong = wrongWith("new", "FOLDER", folder);
  return wrong ? { wrong } : { name: "new", folder };
}

function parseOptions(name, words) {
  const known = OPTIONS[name];
  const found = {};
  for (const token of tokensOf(words)) {
    if (token.kind === "option-terminator") continue;
    const word = token.kind === "option" ? token.rawName : token.value;
    if (token.kind !== "option" || !Object.hasOwn(known, token.name)) {
      return { wrong: `\`${name}\` does not know \`${word}\`: it takes ${optionsOf(known)}.` };
    }
    const what = known[token.name];
    const wrong = wrongWith(word, what, token.value);
    if (wrong) return { wrong };
    const value = readValue(token.value, what);
    found[token.name] = token.name === REPEATED ? [...(found[REPEATED] ?? []), value] : value;
  }
  return found;
}

function readValue(value, what) {
  if (what === FLAG) return true;
  return what === "NUMBER" ? portIn(value) : value;
}

function optionsOf(known) {
  const written = ([option, what]) => (what === FLAG ? `--${option}` : `--${option}=${what}`);
  return listed(Object.entries(known).map(written));
}

function listed(words) {
  return words.join(", ").replace(/, ([^,]*)$/, " and $1");
}

function wrongWith(word, what, value) {
  if (what === FLAG) return value === undefined ? undefined : `\`${word}\` takes no value.`;
  if (what === "lines") return value === what ? undefined : `\`${word}\` takes \`lines\` alone.`;
  if (!value) return `\`${word}\` needs a ${what.toLowerCase()}: ${word}=${what}.`;
  const shown = value.replace(UNSEEN, (one) => `\\u{${one.codePointAt(0).toString(16)}}`);
  if (what === "NUMBER" && portIn(value) === undefined) {
    return `\`${word}\` takes a whole number from 1 to ${LAST_PORT}, not \`${shown}\`.`;
  }
  if (what === "ADDRESS" && isIP(value) === 0) {
    return `\`${word}\` takes an IP address of this computer, or 0.0.0.0 for all of them, not \`${shown}\`.`;
  }
  if (what === "FOLDER" && shown !== value) {
    return `\`${word}\` takes a folder without characters that nobody can see, not \`${shown}\`.`;
  }
  return undefined;
}

function tokensOf(words) {
  const options = Object.fromEntries(
    Object.values(OPTIONS).flatMap((known) =>
      Object.entries(known).map(([name, what]) => [
        name,
        { type: what === FLAG ? "boolean" : "string" },
      ]),
    ),
  );
  return parseArgs({ args: [...words], options, strict: false, tokens: true }).tokens;
}

function portIn(text) {
  const port = /^\d{1,5}$/.test(text) ? Number(text) : 0;
  return port >= 1 && port <= LAST_PORT ? port : undefined;
}

/** The line that stands there while everything else is loaded. `usual` is what is read where no folder is named. */
export function sayBeginning(command, usual = "content") {
  const { name, content = usual, with: packs = [], output = "_site", folder } = command;
  const from = packs.length > 0 ? `${content} with ${listed(packs)}` : content;
  switch (name) {
    case "build":
      return `Building the book from ${from} into ${output} …`;
    case "new":
      return `Beginning a book in ${folder} …`;
    case "check":
      return `Checking ${from} …`;
    default:
      return `Opening the book from ${from} …`;
  }
}
