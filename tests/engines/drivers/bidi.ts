/** WebDriver BiDi (W3C): commands and their answers over a websocket. */
import WebSocket from "ws";

export interface Bidi {
  /** Throws what the browser answers where it is an error, or where it does not answer at all. */
  send(method: string, params: Readonly<Record<string, unknown>>): Promise<Answer>;
  close(): void;
}

/** An object of the protocol; each caller takes from it what it asked for. */
export type Answer = Readonly<Record<string, unknown>>;

const SECONDS = 60;

/** A session of its own at a browser that listens there. */
export async function openBidi(address: string): Promise<Bidi> {
  const socket = new WebSocket(address);
  const waiting = new Map<number, (message: Answer) => void>();
  let last = 0;
  socket.on("message", (data) => {
    const message: Answer = JSON.parse(String(data));
    waiting.get(Number(message.id))?.(message);
  });
  await new Promise<void>((resolve, reject) => {
    socket.once("open", resolve);
    socket.once("error", reject);
  });
  return {
    send: async (method, params) => {
      last += 1;
      const id = last;
      const message = await new Promise<Answer>((resolve, reject) => {
        const late = setTimeout(() => reject(new Error(`${method}: no answer`)), 1_000 * SECONDS);
        waiting.set(id, (answer) => {
          clearTimeout(late);
          waiting.delete(id);
          resolve(answer);
        });
        socket.send(JSON.stringify({ id, method, params }));
      });
      if (message.type === "success") return asAnswer(message.result);
      throw new Error(`${method}: ${message.error}: ${message.message}`);
    },
    close: () => socket.terminate(),
  };
}

export function asAnswer(value: unknown): Answer {
  return typeof value === "object" && value !== null
    ? Object.fromEntries(Object.entries(value))
    : {};
}
