/** What TypeScript sees of `parse-command.mjs`, which is plain JavaScript: it answers before anything is bundled. */

/** What all commands read that work on content. */
interface ReadFolders {
  readonly content?: string;
  /** Folders to build on, in their written order. */
  readonly with?: readonly string[];
}

/** The commands as they are understood from their words. */
export type Command =
  | (ReadFolders & { readonly name: "build"; readonly output?: string })
  | (ReadFolders & { readonly name: "check"; readonly format?: "lines"; readonly watch?: true })
  | (ReadFolders & {
      readonly name: "start";
      readonly port?: number;
      /** An IP address. */
      readonly host?: string;
    })
  | { readonly name: "new"; readonly folder: string };

export declare const HELP: string;
export declare function parseCommand(
  words: readonly string[],
): Command | { readonly name: "help" | "version" } | { readonly wrong: string };
export declare function sayBeginning(command: Command, usual?: string): string;
