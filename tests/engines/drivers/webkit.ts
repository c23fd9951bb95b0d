/** WebKit, as WebKitGTK has it: its small browser on a screen that nobody sees, over WebDriver. */
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { debianProgram } from "../../setup/need-debian.ts";
import { pressAt, typeKeys } from "./actions.ts";
import type { Engine } from "./engine.ts";
import { type Program, pause, startProgram } from "./start-program.ts";
import { webDriver } from "./web-driver.ts";

type Ask = ReturnType<typeof webDriver>;

const PACKAGES = ["webkit2gtk-driver", "xvfb"];
const SCREEN = ["-displayfd", "1", "-screen", "0", "1600x1200x24", "-nolisten", "tcp"];

/** Its bar of buttons would keep a window from being as narrow as a phone. */
const NO_BAR =
  "* { min-width: 0; min-height: 0; margin: 0; padding: 0; border: 0; font-size: 1px; }";

/** An element in an answer (W3C WebDriver, "Elements"). */
const ELEMENT = "element-6066-11e4-a52e-4f735466cecf";

export async function startWebkit(): Promise<Engine> {
  const [driverPath, screenPath] = ["WebKitWebDriver", "Xvfb"].map((name) =>
    debianProgram(`/usr/bin/${name}`, PACKAGES),
  );
  const folder = mkdtempSync(join(tmpdir(), "spanbook-webkit-"));
  const programs: Program[] = [];
  const start = (path = "", words: readonly string[] = [], env = {}) => {
    const program = startProgram(path, words, env);
    programs.unshift(program);
    return program;
  };
  const close = async () => {
    for (const program of programs) await program.end();
    rmSync(folder, { recursive: true, force: true });
  };
  try {
    const [, display] = await start(screenPath, SCREEN).says(/^(\d+)\n/m, 30);
    const port = await freePort();
    start(driverPath, [`--port=${port}`, "--host=127.0.0.1"], {
      DISPLAY: `:${display}`,
      // Its pages are drawn by the processor either way, and this way half as often.
      WEBKIT_DISABLE_COMPOSITING_MODE: "1",
      ...homeIn(folder),
    });
    const ask = webDriver(`http://127.0.0.1:${port}`);
    await untilReady(ask);
    const path = await openSession(ask);
    return {
      ...engineAt(ask, path),
      downloads: downloadsIn(folder),
      close: async () => {
        // A browser whose driver is ended before its session stays.
        await ask("DELETE", path).catch(() => undefined);
        await close();
      },
    };
  } catch (error) {
    await close();
    throw error;
  }
}

const downloadsIn = (folder: string) => join(folder, "downloads");

/** A home of its own, with nothing of the person's who runs the tests. */
function homeIn(folder: string): Readonly<Record<string, string>> {
  const config = join(folder, "config");
  mkdirSync(join(config, "gtk-3.0"), { recursive: true });
  mkdirSync(downloadsIn(folder));
  writeFileSync(join(config, "gtk-3.0/gtk.css"), NO_BAR);
  writeFileSync(join(config, "user-dirs.dirs"), `XDG_DOWNLOAD_DIR="${downloadsIn(folder)}"\n`);
  return {
    HOME: folder,
    XDG_CONFIG_HOME: config,
    XDG_DATA_HOME: join(folder, "data"),
    XDG_CACHE_HOME: join(folder, "cache"),
  };
}

async function untilReady(ask: Ask, tries = 600): Promise<void> {
  try {
    await ask("GET", "/status");
  } catch (error) {
    if (tries === 0) throw error;
    await pause(50);
    await untilReady(ask, tries - 1);
  }
}

/** Where the session is asked. */
async function openSession(ask: Ask): Promise<string> {
  const { stdout } = spawnSync("dpkg", ["-L", "libwebkit2gtk-4.1-0"], { encoding: "utf8" });
  const binary = stdout.split("\n").find((path) => path.endsWith("/MiniBrowser"));
  const session = await ask("POST", "/session", {
    capabilities: {
      alwaysMatch: {
        browserName: "MiniBrowser",
        timeouts: { script: 30_000, pageLoad: 60_000 },
        "webkitgtk:browserOptions": { binary, args: ["--automation"] },
      },
    },
  });
  return `/session/${Object(session).sessionId}`;
}

function engineAt(ask: Ask, path: string): Omit<Engine, "downloads" | "close"> {
  const post = (command: string, body: unknown) => ask("POST", `${path}/${command}`, body);
  const done = () => undefined;
  return {
    open: (url) => post("url", { url }).then(done),
    run: async (script, ...given) => {
      const answer = await post("execute/async", {
        script: `const [given, answer] = arguments;
          const failed = (error) => answer(JSON.stringify({ error: String(error) }));
          Promise.resolve(given)
            .then((text) => (${script})(...JSON.parse(text)))
            .then((result) => answer(JSON.stringify({ result: result ?? null })), failed);`,
        args: [JSON.stringify(given)],
      });
      const { error, result } = JSON.parse(String(answer));
      if (error !== undefined) throw new Error(error);
      return result;
    },
    press: (x, y) => post("actions", { actions: pressAt(x, y) }).then(done),
    type: (keys) => post("actions", { actions: typeKeys(keys) }).then(done),
    choose: async (selector, file) => {
      const element = await post("element", { using: "css selector", value: selector });
      await post(`element/${Object(element)[ELEMENT]}/value`, { text: file });
    },
    resize: (width, height) => post("window/rect", { width, height, x: 0, y: 0 }).then(done),
  };
}

/** A port that nobody listens at. */
async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const place = server.address();
  await new Promise((resolve) => server.close(resolve));
  if (typeof place !== "object" || place === null) throw new Error("the server has no port");
  return place.port;
}
