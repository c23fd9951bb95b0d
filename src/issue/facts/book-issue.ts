/** What can be wrong between files that are each all right, as facts. */
import type { PageSide } from "../../measure/paper-side.ts";
import type { Place } from "./place.ts";

export type BookIssue = { readonly about: "book"; readonly at: Place } & (
  | {
      readonly kind: "unknown-slug";
      readonly what: "notebook" | "pattern" | "strip" | "setup";
      readonly slug: string;
      readonly known: readonly string[];
      readonly nearest?: string;
    }
  | { readonly kind: "repeated-slug"; readonly slug: string; readonly first: Place }
  /** A folder to build on that cannot be one; `at` is where it is named, or the folder itself. */
  | {
      readonly kind: "bad-pack";
      readonly name: string;
      readonly why: PackFault;
      /** The folder that it is, where that is another one's, too. */
      readonly other?: string;
    }
  /** Two files of one name in the folders that a book is made of. */
  | {
      readonly kind: "twice";
      readonly what: "notebook" | "pattern" | "strip" | "setup";
      readonly slug: string;
      /** The path of the other file. */
      readonly other: string;
    }
  /** What the `book.yaml` of a folder that a book builds on says in vain. */
  | {
      readonly kind: "ignored-in-pack";
      readonly key: string;
      /** Of its own `with`, the folders that the book does not name. */
      readonly folders: readonly string[];
    }
  /** A plain division of a strip whose title makes the slug of a pattern. */
  | { readonly kind: "title-of-pattern"; readonly slug: string }
  /** A label asks for the moon, and the book's calendar does not say by which clock. */
  | { readonly kind: "moon-without-offset" }
  /** Margin keys that land on one side of a page, with a binding that a notebook of the book has. */
  | {
      readonly kind: "margin-clash";
      readonly side: "top" | "right" | "bottom" | "left";
      readonly keys: readonly string[];
      readonly page: PageSide;
      readonly binding: "left" | "right" | "top" | "none";
      readonly notebooks: readonly string[];
    }
);

/** Why a book cannot build on a folder. */
export type PackFault =
  | "missing"
  | "not-a-folder"
  | "unreadable-folder"
  | "leaves-folder"
  /** It has no folder of content. */
  | "empty"
  /** One of the content's own folders. */
  | "own"
  /** Named twice, or the content folder itself. */
  | "same";
