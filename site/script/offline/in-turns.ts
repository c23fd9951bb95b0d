/** Work on many addresses, a few at a time. */

/** How many files are fetched at a time. */
const AT_ONCE = 6;

/** Ends when all are over, or with the first that fails. */
export async function inTurns(
  addresses: readonly string[],
  act: (address: string) => Promise<void>,
): Promise<void> {
  const rest = addresses.values();
  const work = async () => {
    for (let next = rest.next(); !next.done; next = rest.next()) await act(next.value);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
}
