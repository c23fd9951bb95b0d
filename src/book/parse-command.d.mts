/** What TypeScript sees of `parse-command.mjs`, which is plain JavaScript: it answers before anything is bundled. */
import type { Command } from "./command.ts";

export declare function parseCommand(
  words: readonly string[],
): Command | { readonly wrong: string };
export declare function sayBeginning(command: Command): string;
