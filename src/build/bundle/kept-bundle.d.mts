/** What TypeScript sees of `kept-bundle.mjs`, which is plain JavaScript: it runs before there is an engine. */
export declare const PROJECT: string;
export declare const PACKED: string | undefined;
export declare function keptBundle(bundle: {
  readonly kind: string;
  readonly sources: readonly string[];
  readonly make: (folder: string) => Promise<void>;
}): Promise<string>;
