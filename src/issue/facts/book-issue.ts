/** What can be wrong between files that are each all right, as facts. */
import type { PageSide } from "../../measure/paper-side.ts";
import type { Place } from "./place.ts";

export type BookIssue = { readonly about: "book"; readonly at: Place } & (
  | {
      readonly kind: "unknown-slug";
      readonly what: "notebook" | "pattern" | "setup";
      readonly slug: string;
      readonly known: readonly string[];
      readonly nearest?: string;
    }
  | { readonly kind: "repeated-slug"; readonly slug: string; readonly first: Place }
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
