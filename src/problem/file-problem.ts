/** What can be wrong with a file before its text is looked at, as facts. */
import type { Place } from "./place.ts";

export type FileProblem = { readonly about: "file"; readonly at: Place } & (
  | {
      readonly kind: /** At the first character that is not UTF-8. */
        | "not-utf8"
        | "unreadable"
        /** A link to what is not there. */
        | "dead-link"
        | "leaves-folder"
        | "no-front-matter"
        | "open-front-matter";
    }
  | { readonly kind: "missing"; readonly what: "folder" | "file" }
  /** A folder without a single file to read. */
  | { readonly kind: "empty-folder" }
  /** `better` is a name that would do, where one can be made. */
  | { readonly kind: "bad-name"; readonly name: string; readonly better?: string }
  | { readonly kind: "too-large"; readonly limitKib: number }
);
