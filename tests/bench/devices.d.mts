/** The switches, as a test reads them. */
export const DEVICES: Readonly<
  Record<string, { readonly edits: readonly (readonly [file: string, from: string, to: string])[] }>
>;
