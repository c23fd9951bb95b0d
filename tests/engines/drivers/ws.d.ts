/** The little of ws 8 that the tests use; the package brings no types. */
declare module "ws" {
  export default class WebSocket {
    constructor(address: string);
    once(event: "open", hear: () => void): void;
    once(event: "error", hear: (error: Error) => void): void;
    on(event: "message", hear: (data: Uint8Array) => void): void;
    send(text: string): void;
    terminate(): void;
  }
}
