/** The little of a service worker's surroundings that the book uses (W3C, Service Workers). */

/** What the build wrote above the script. */
export interface Build {
  readonly version: string;
  /** Kept from the start, as paths from the book's root. */
  readonly shell: readonly string[];
}

interface WaitingEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}

interface AnsweringEvent extends WaitingEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

interface TellingEvent extends WaitingEvent {
  readonly data: unknown;
  readonly source: { postMessage(message: unknown): void } | null;
}

export interface WorkerScope {
  readonly spanbookBuild: Build;
  readonly caches: CacheStorage;
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  fetch(request: Request | string, init?: RequestInit): Promise<Response>;
  skipWaiting(): Promise<void>;
  addEventListener(type: "install" | "activate", act: (event: WaitingEvent) => void): void;
  addEventListener(type: "fetch", act: (event: AnsweringEvent) => void): void;
  addEventListener(type: "message", act: (event: TellingEvent) => void): void;
}
