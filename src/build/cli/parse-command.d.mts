/** What TypeScript sees of `parse-command.mjs`, which is plain JavaScript: it answers before anything is bundled. */

/** What all commands read. */
interface ReadFolders {
  readonly content?: string;
  /** Folders to build on, in their written order. */
  readonly with?: readonly string[];
}

/** The three commands as they are understood from their words. */
export type Command = ReadFolders &
  (
    | { readonly name: "build"; readonly output?: string }
    | { readonly name: "check" }
    | {
        readonly name: "start";
        readonly port?: number;
        /** An IP address. */
        readonly host?: string;
      }
  );

export declare function parseCommand(
  words: readonly string[],
): Command | { readonly wrong: string };
export declare function sayBeginning(command: Command): string;
