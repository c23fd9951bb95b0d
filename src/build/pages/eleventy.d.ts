/** The little of Eleventy's own interface that the book uses; the package brings no types. */
declare module "@11ty/eleventy" {
  import type { IncomingMessage, Server, ServerResponse } from "node:http";

  interface EleventyOptions {
    readonly configPath?: string;
    readonly quietMode?: boolean;
    readonly runMode?: "build" | "serve";
    readonly config?: (config: UserConfig) => void;
  }

  interface UserConfig {
    addGlobalData(name: string, value: unknown): void;
  }

  /** Of `@11ty/eleventy-dev-server`; the underscore is its own. */
  export interface DevServer {
    readonly server: Server;
    /** There once the server listens. */
    readonly updateServer: { on(event: "connection", use: (socket: WatchingSocket) => void): void };
    reload(event: { readonly files: readonly string[] }): Promise<void>;
    sendError(event: { readonly error: unknown }): Promise<void>;
    onRequestHandler(request: IncomingMessage, response: ServerResponse): Promise<void>;
    _serverListen: (port: number) => void;
  }

  interface WatchingSocket {
    on(event: "error", use: () => void): void;
  }

  export interface ServeModule {
    getServerModule: (name?: string) => Promise<{
      getServer: (...given: readonly unknown[]) => DevServer;
    }>;
  }

  export class Eleventy {
    readonly eleventyServe: ServeModule;
    constructor(input: string, output: string, options: EleventyOptions);
    init(): Promise<void>;
    disableLogger(): void;
    /** Forgets what the last writing held; `init` comes next. */
    restart(): Promise<void>;
    write(): Promise<unknown>;
    /** Gives the way to build again, for a path that was edited. */
    watch(): Promise<(path: string) => Promise<void>>;
    serve(port?: number): Promise<void>;
    stopWatch(): Promise<unknown>;
  }
}
