/** What a keeper should know of a strip before cutting it, as facts. */

export type StripNote = {
  /** The lanes do not fit the width that the recipe asks for, so the strip is drawn wider. */
  readonly kind: "too-narrow";
  /** In millimetres: as asked for, and as drawn. */
  readonly width: number;
  readonly needs: number;
  /** The lanes of both sides. */
  readonly lanes: readonly number[];
};
