/** Numbers as people type them into a field: figures, with a point or a comma before the decimals. */
import { hasMoreDecimals } from "../../../src/written/decimals.ts";
