/** Firefox, over the protocol that it speaks by itself: WebDriver BiDi. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { debianProgram } from "../../setup/need-debian.ts";
import { pressAt, typeKeys } from "./actions.ts";
import { asAnswer, type Bidi, openBidi } from "./bidi.ts";
import type { Engine } from "./engine.ts";
import { pause, startProgram } from "./start-program.ts";

/** Nothing of its own on the network, no first page, and a close that is not asked about. */
const PREFERENCES = {
  "app.normandy.enabled": false,
  "browser.shell.checkDefaultBrowser": false,
  "browser.startup.page": 0,
  "datareporting.policy.dataSubmissionEnabled": false,
  "extensions.update.enabled": false,
  "network.captive-portal-service.enabled": false,
  "network.connectivity-service.enabled": false,
  // A PDF file is saved, and not shown as well.
  "pdfjs.disabled": true,
  "services.settings.server": "data:,",
  "toolkit.telemetry.enabled": false,
};

/** In centimetres, as the protocol has them. */
const A4 = { width: 21, height: 29.7 };

export async function startFirefox(): Promise<Engine> {
  const path = debianProgram("/usr/bin/firefox-esr", ["firefox-esr"]);
  const folder = mkdtempSync(join(tmpdir(), "spanbook-firefox-"));
  const lines = Object.entries(PREFERENCES).map(
    ([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});`,
  );
  writeFileSync(join(folder, "user.js"), lines.join("\n"));
  const words = ["--headless", "--no-remote", "--profile", folder, "--remote-debugging-port=0"];
  const program = startProgram(path, words, { HOME: folder });
  const close = async () => {
    await program.end();
    rmSync(folder, { recursive: true, force: true });
  };
  try {
    const [, address] = await program.says(/BiDi listening on (ws:\S+)/, 60);
    const bidi = await openBidi(`${address}/session`);
    return await openSession(bidi, folder, async () => {
      bidi.close();
      await close();
    });
  } catch (error) {
    await close();
    throw error;
  }
}

async function openSession(
  bidi: Bidi,
  folder: string,
  close: () => Promise<void>,
): Promise<Engine> {
  await bidi.send("session.new", { capabilities: {} });
  const { contexts } = await bidi.send("browsingContext.getTree", {});
  const first = Array.isArray(contexts) ? asAnswer(contexts[0]) : {};
  const context = String(first.context);
  const downloadBehavior = { type: "allowed", destinationFolder: folder };
  await bidi.send("browser.setDownloadBehavior", { downloadBehavior });
  const call = async (declaration: string, given: unknown) => {
    const answer = await bidi.send("script.callFunction", {
      functionDeclaration: declaration,
      arguments: [{ type: "string", value: JSON.stringify(given) }],
      target: { context },
      awaitPromise: true,
      userActivation: true,
    });
    if (answer.type === "exception")
      throw new Error(String(asAnswer(answer.exceptionDetails).text));
    return asAnswer(answer.result);
  };
  const act = async (actions: readonly unknown[], tries = 20): Promise<void> => {
    try {
      await bidi.send("input.performActions", { context, actions });
    } catch (error) {
      // From the web to disk a page moves to another process, whose window is there a little later.
      if (tries === 0 || !String(error).includes("NS_ERROR_FAILURE")) throw error;
      await pause(100);
      await act(actions, tries - 1);
    }
  };
  return {
    downloads: folder,
    close,
    open: async (url) => {
      await bidi.send("browsingContext.navigate", { context, url, wait: "complete" });
    },
    run: async (script, ...given) => {
      const { value } = await call(
        `async (given) => JSON.stringify((await (${script})(...JSON.parse(given))) ?? null)`,
        given,
      );
      return JSON.parse(String(value));
    },
    press: (x, y) => act(pressAt(x, y)),
    type: (keys) => act(typeKeys(keys)),
    choose: async (selector, path) => {
      const { sharedId } = await call(
        "(given) => document.querySelector(JSON.parse(given))",
        selector,
      );
      await bidi.send("input.setFiles", { context, element: { sharedId }, files: [path] });
    },
    resize: async (width, height) => {
      await bidi.send("browsingContext.setViewport", { context, viewport: { width, height } });
    },
    print: async () => {
      const { data } = await bidi.send("browsingContext.print", {
        context,
        background: true,
        shrinkToFit: false,
        page: A4,
        margin: { top: 0, right: 0, bottom: 0, left: 0 },
      });
      return Buffer.from(String(data), "base64");
    },
  };
}
