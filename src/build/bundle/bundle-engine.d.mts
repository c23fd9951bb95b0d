/** What TypeScript sees of `bundle-engine.mjs`, which is plain JavaScript: it runs before there is an engine. */
import type { Engine } from "./loaded-engine.ts";

export declare const PROJECT: string;
export declare function loadEngine(): Promise<Engine>;
