/** Starts one browser for all tests that need one; each file of tests has a connection, and contexts, of its own. */
import type { TestProject } from "vitest/node";
import { launchBrowserServer } from "../browser/launch.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** The address at which the browser is reached. */
    browser: string;
  }
}

export default async function openBrowser(project: TestProject): Promise<() => Promise<void>> {
  const server = await launchBrowserServer();
  project.provide("browser", server.wsEndpoint());
  return () => server.close();
}
