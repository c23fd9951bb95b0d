/** The little of a service worker's surroundings that the book uses (W3C, Service Workers). */

/** What the build wrote above the script. */
export interface Build {
  readonly version: string;
  /** Kept from the start, as paths from the book's root. */
  readonly shell: readonly string[];
  /** Of the files and folders at the book's root: what else lies there is not the book's. */
  readonly names: readonly string[];
}

interface WaitingEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}

interface AnsweringEvent extends WaitingEvent {
  readonly request: Request;
  /** Of the page that asks, unless a page is what is asked for. */
  readonly clientId: string;
  respondWith(answer: Promise<Response>): void;
}

interface TellingEvent extends WaitingEvent {
  readonly data: unknown;
  readonly source: { postMessage(message: unknown): void } | null;
}

/** Files by their addresses. */
export interface FileCache {
  match(address: string): Promise<Response | undefined>;
  put(address: string, answer: Response): Promise<void>;
  keys(): Promise<readonly { readonly url: string }[]>;
}

export interface WorkerScope {
  readonly spanbookBuild: Build;
  readonly caches: {
    open(name: string): Promise<FileCache>;
    keys(): Promise<string[]>;
    delete(name: string): Promise<boolean>;
  };
  readonly registration: {
    readonly scope: string;
    /** Workers of a newer build, while it is fetched and until it takes over. */
    readonly installing: unknown;
    readonly waiting: unknown;
  };
  readonly clients: {
    claim(): Promise<void>;
    get(id: string): Promise<{ readonly url: string } | undefined>;
  };
  fetch(request: Request | string, init?: RequestInit): Promise<Response>;
  skipWaiting(): Promise<void>;
  addEventListener(type: "install" | "activate", act: (event: WaitingEvent) => void): void;
  addEventListener(type: "fetch", act: (event: AnsweringEvent) => void): void;
  addEventListener(type: "message", act: (event: TellingEvent) => void): void;
}
