/** What can be wrong with a file before its text is looked at, as facts. */
import type { Place } from "./place.ts";

export type FileIssue = { readonly about: "file"; readonly at: Place } & (
  | {
      readonly kind: /** At the first character that is not UTF-8. */
        | "not-utf8"
        | "unreadable"
        /** A link to what is not there. */
        | "dead-link"
        | "leaves-folder"
        | "not-a-folder"
        | "unreadable-folder"
        /** A file with front matter in none of the content's folders. */
        | "misplaced"
        | "no-front-matter"
        | "open-front-matter";
    }
  | { readonly kind: "missing"; readonly what: "folder" | "file" }
  /** A folder without a single file to read. */
  | { readonly kind: "empty-folder" }
  /** A folder within one of the content's folders, with `count` files that were meant to be read. */
  | { readonly kind: "unread-folder"; readonly folder: string; readonly count: number }
  /** A folder or file that was meant to be called `better`, which is a name of the content's own. */
  | {
      readonly kind: "misnamed";
      readonly name: string;
      readonly better: string;
      /** What has that name already. */
      readonly taken?: "folder" | "file";
    }
  /** `better` is a name that would do, where one can be made; it may be another file's already. */
  | {
      readonly kind: "bad-name";
      /** Windows keeps it for a device. */
      readonly isDevice?: boolean;
      readonly name: string;
      readonly better?: string;
      readonly isTaken?: boolean;
    }
  | { readonly kind: "too-large"; readonly limitKib: number }
);
