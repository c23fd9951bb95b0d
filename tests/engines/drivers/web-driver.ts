/** WebDriver as it was first (W3C): commands and their answers over HTTP. */

export type Method = "GET" | "POST" | "DELETE";

const SECONDS = 60;

/** Asks a driver that listens at this address; throws what it answers where it is an error, or where it does not answer at all. */
export function webDriver(address: string) {
  return async (method: Method, path: string, body?: unknown): Promise<unknown> => {
    const response = await fetch(address + path, {
      method,
      body: body === undefined ? null : JSON.stringify(body),
      signal: AbortSignal.timeout(1_000 * SECONDS),
    });
    const { value }: { readonly value: unknown } = JSON.parse(await response.text());
    if (response.ok) return value;
    throw new Error(`${method} ${path}: ${JSON.stringify(value)}`);
  };
}
