/** A keeper's hand and eye in any engine: it waits until a thing is there, presses and types as a person does, and reads. */
import { readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Engine } from "./drivers/engine.ts";
import { pause } from "./drivers/start-program.ts";
import { NOTES } from "./watched-book.ts";

export interface Hand {
  readonly engine: Engine;
  open(address: string): Promise<void>;
  /** Presses the first thing in sight that the selector finds, with these words on it where some are given. */
  press(selector: string, words?: string): Promise<void>;
  /** Types a text in place of what a field has. */
  fill(selector: string, text: string): Promise<void>;
  /** Chooses from a list, as far as a page can tell: the list itself is drawn by the system, not by the page. */
  select(selector: string, value: string): Promise<void>;
  /** Waits until the text of what the selector finds has these words in it. */
  reads(selector: string, words: string): Promise<void>;
  /** Waits until a function has something to say in the page. Throws its own text where it does not. */
  until<Given extends readonly unknown[], Result>(
    script: (...given: Given) => Result,
    ...given: Given
  ): Promise<NonNullable<Awaited<Result>>>;
  /** The file that a page hands over, by the end of its name. */
  saved(ending: string): Promise<Uint8Array>;
  /** Chooses a file of this content in a field. */
  choose(selector: string, name: string, content: string | Uint8Array): Promise<void>;
  /** What the pages so far complained of. */
  complaints(): Promise<readonly string[]>;
}

/** What the hand chooses lies beside what pages save. */
const CHOSEN = "chosen-";

/** It ends only what hangs. */
const SECONDS = 30;

export function openHand(engine: Engine): Hand {
  const until: Hand["until"] = async (script, ...given) => {
    const end = performance.now() + 1_000 * SECONDS;
    let failure: unknown = "";
    while (performance.now() < end) {
      try {
        const result = await engine.run(script, ...given);
        if (result) return result;
      } catch (error) {
        // A page that is just being left cannot answer; the next one will.
        failure = error;
      }
      await pause(40);
    }
    throw new Error(`it never came true: ${script} for ${JSON.stringify(given)} ${failure}`);
  };
  const press = async (selector: string, words = "") => {
    const [x, y] = await until(placeOf, selector, words);
    await engine.press(x, y);
  };
  return {
    engine,
    until,
    press,
    open: (address) => engine.open(address),
    fill: async (selector, text) => {
      await press(selector);
      await engine.run(selectAll, selector);
      await engine.type(text);
    },
    select: (selector, value) => until(chooseOption, selector, value).then(() => undefined),
    reads: async (selector, words) => {
      await until(
        (sought, said) =>
          [...document.querySelectorAll(sought)].some((one) => one.textContent?.includes(said)),
        selector,
        words,
      );
    },
    saved: (ending) => savedFile(engine.downloads, ending),
    choose: async (selector, name, content) => {
      const path = join(engine.downloads, CHOSEN + name);
      writeFileSync(path, content);
      await engine.choose(selector, path);
    },
    complaints: async () => {
      const noted = await engine.run((name) => {
        const notes = sessionStorage.getItem(name) ?? "";
        sessionStorage.removeItem(name);
        return notes;
      }, NOTES);
      return noted.split("\n").filter(Boolean);
    },
  };
}

/** Where a press on it lands, once it is in the window, lies still and can be pressed. */
async function placeOf(
  selector: string,
  words: string,
): Promise<readonly [number, number] | undefined> {
  const look = () => {
    const found = [...document.querySelectorAll(selector)].find(
      (one) => one.textContent?.includes(words) && one.checkVisibility(),
    );
    found?.scrollIntoView({ block: "center", behavior: "instant" });
    const { x = 0, y = 0, width = 0, height = 0 } = found?.getClientRects()[0] ?? {};
    return { found, x: Math.floor(x + width / 2), y: Math.floor(y + height / 2) };
  };
  const before = look();
  // What a page still has to do comes with its next frame, however late that is.
  const frame = () => new Promise(requestAnimationFrame);
  await frame().then(frame);
  const { found, x, y } = look();
  if (!found || found !== before.found || x !== before.x || y !== before.y) return undefined;
  const there = document.elementFromPoint(x, y);
  return there && (found.contains(there) || there.contains(found)) ? [x, y] : undefined;
}

function selectAll(selector: string): void {
  const field = document.querySelector(selector);
  if (field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement) field.select();
}

function chooseOption(selector: string, value: string): boolean {
  const field = document.querySelector(selector);
  if (!(field instanceof HTMLSelectElement)) return false;
  field.value = value;
  if (field.value !== value) return false;
  field.dispatchEvent(new Event("input", { bubbles: true }));
  field.dispatchEvent(new Event("change", { bubbles: true }));
  return true;
}

/** Waits until a download is whole: it has stopped growing. */
async function savedFile(folder: string, ending: string): Promise<Uint8Array> {
  const end = performance.now() + 1_000 * SECONDS;
  for (let size = 0; performance.now() < end; ) {
    await pause(100);
    const name = readdirSync(folder).find((one) => one.endsWith(ending) && !one.startsWith(CHOSEN));
    const path = join(folder, name ?? "");
    const now = name === undefined ? 0 : statSync(path).size;
    if (now > 0 && now === size) {
      const bytes = readFileSync(path);
      rmSync(path);
      return bytes;
    }
    size = now;
  }
  throw new Error(`no ${ending} was saved`);
}
