/** Why a pattern of a set-up takes no page, as facts. */
import type { Misfit } from "./misfit.ts";

export type SetupLeftOut =
  | { readonly kind: "misfit"; readonly misfit: Misfit }
  /** What should fill a free page takes two of them on this notebook. */
  | { readonly kind: "fill-takes-spread" };
