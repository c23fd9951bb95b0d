/** The three commands as they are understood from their words. */

export type Command =
  | { readonly name: "build"; readonly content?: string; readonly output?: string }
  | { readonly name: "check"; readonly content?: string }
  | { readonly name: "start"; readonly content?: string; readonly port?: number };
