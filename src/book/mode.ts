/** How often a book is made: once, or again after each edit. */
export type Mode = "build" | "serve";
