/** The readers of all kinds of files, which remember what they have read. */
import type { TextFile } from "../../issue/facts/reading.ts";
import { readNotebook } from "../../notebook/read-notebook.ts";
import { readRecipe } from "../../recipe/read/read-recipe.ts";
import { readSetup } from "../../recipe/read/read-setup.ts";
import { readStripRecipe } from "../../recipe/read/read-strip-recipe.ts";
import { readWords } from "../../recipe/read/read-words.ts";
import { openRecent } from "./recent.ts";

/** How files are read; who reads a folder again and again reads only those anew that have changed. */
export type Readers = ReturnType<typeof openReaders>;

/** Readers that remember what they read in the last round. */
export function openReaders() {
  const settling: (() => void)[] = [];
  const remembering = <T>(read: (file: TextFile) => T) => {
    const known = openRecent<T>();
    settling.push(known.settle);
    return (file: TextFile) => known.take(`${file.path}\n${file.text}`, () => read(file));
  };
  return {
    notebook: remembering(readNotebook),
    recipe: remembering(readRecipe),
    strip: remembering(readStripRecipe),
    setup: remembering(readSetup),
    words: remembering(readWords),
    /** Ends a round. */
    settle: () => {
      for (const settle of settling) settle();
    },
  };
}
