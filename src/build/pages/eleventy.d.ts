/** The little of Eleventy's own interface that the book uses; the package brings no types. */
declare module "@11ty/eleventy" {
  interface EleventyOptions {
    readonly configPath?: string;
    readonly quietMode?: boolean;
    readonly runMode?: "build" | "serve";
    readonly config?: (config: UserConfig) => void;
  }

  interface UserConfig {
    addGlobalData(name: string, value: unknown): void;
  }

  export class Eleventy {
    constructor(input: string, output: string, options: EleventyOptions);
    init(): Promise<void>;
    disableLogger(): void;
    write(): Promise<unknown>;
    watch(): Promise<unknown>;
    serve(port?: number): Promise<void>;
    stopWatch(): Promise<unknown>;
  }
}
