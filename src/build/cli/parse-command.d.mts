/** What TypeScript sees of `parse-command.mjs`, which is plain JavaScript: it answers before anything is bundled. */

/** The three commands as they are understood from their words. */
export type Command =
  | { readonly name: "build"; readonly content?: string; readonly output?: string }
  | { readonly name: "check"; readonly content?: string }
  | {
      readonly name: "start";
      readonly content?: string;
      readonly port?: number;
      /** An IP address. */
      readonly host?: string;
    };

export declare function parseCommand(
  words: readonly string[],
): Command | { readonly wrong: string };
export declare function sayBeginning(command: Command): string;
