/** Keeps a store and the part of the address behind # in step: the only place that writes it or hears of its change. */
import type { Store } from "./store.ts";

/** The way back leads to each address that was pushed, and to none that was replaced. */
type HistoryStep = "push" | "replace";

/** Browsers refuse an address that changes at every key press for long. */
export const TYPING_REST_MS = 250;

export interface AddressBinding<State> {
  /** The part from # on, "" for none; nothing where this change leaves the address as it is. */
  write(state: State, before: State): string | undefined;
  /** Says what an address asks for that somebody else has set; what `take` does is not written as a change of one's own. */
  read(hash: string, take: (act: () => void) => void): void;
  /** Is what was read written anew, in full? Else the address stays as it came. */
  readonly isRewritten?: boolean;
  /** Does a change of one's own get a step of the history? Not where nothing is said. */
  step?(state: State, before: State): HistoryStep;
  /** Changes are written when there was none for so long; at once where nothing is said. */
  readonly restMs?: number;
  /** Told of every change of one's own when it was written. */
  written?(state: State, before: State): void;
  /** Told when something was taken from the address. */
  taken?(): void;
}

/** Follows the store and the address from now on; the result reads the address as it is. */
export function bindAddress<State>(
  window: Window,
  store: Pick<Store<State>, "state" | "subscribe">,
  binding: AddressBinding<State>,
): () => void {
  const { restMs = 0, isRewritten = false } = binding;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isTaking = false;
  /** The state that was written, or taken from the address, last. */
  let last = store.state();
  /** The address that was written or read last: another one is somebody else's, and is soon to be read. */
  let known = window.location.hash;
  /** Has done with what was changed since; without a step the address stays as it is. */
  const settle = (step?: HistoryStep) => {
    clearTimeout(timer);
    const [state, before] = [store.state(), last];
    last = state;
    const address = state === before ? undefined : binding.write(state, before);
    if (address === undefined) return;
    if (step && window.location.hash === known) known = setAddress(window, address, step);
    if (!isTaking) binding.written?.(state, before);
  };
  const settleOwn = () => settle(binding.step?.(store.state(), last) ?? "replace");
  store.subscribe(() => {
    if (isTaking) return;
    clearTimeout(timer);
    if (restMs > 0) timer = setTimeout(settleOwn, restMs);
    else settleOwn();
  });
  const take = (act: () => void) => {
    settle();
    isTaking = true;
    try {
      act();
      settle(isRewritten ? "replace" : undefined);
      binding.taken?.();
    } finally {
      isTaking = false;
    }
  };
  const read = () => {
    // What still waits was changed here: it is kept, but the address is somebody else's now.
    settle();
    known = window.location.hash;
    binding.read(known, take);
  };
  window.addEventListener("hashchange", read);
  // Whoever leaves at once after a change is not to lose it.
  window.addEventListener("pagehide", settleOwn);
  return read;
}

/** The address as it is then. */
function setAddress({ history, location }: Window, address: string, step: HistoryStep): string {
  const href = location.href.replace(/#.*$/, "") + address;
  try {
    if (href === location.href) return location.hash;
    if (step === "push") history.pushState(null, "", href);
    else history.replaceState(null, "", href);
  } catch {
    // A browser may refuse an address that changes too often; the next change will try again.
  }
  return location.hash;
}
