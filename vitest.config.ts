/** Two sets of tests: those of the engine need nothing, those of the book share one that is built beforehand. */
import { defineConfig } from "vitest/config";

const OF_THE_BOOK = ["tests/book/**/*.test.ts", "tests/browser/**/*.test.ts"];

/** No test measures time by its limit: it only ends what hangs. */
const A_SLOW_MACHINE_MS = 180_000;

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "engine",
          include: ["tests/**/*.test.ts"],
          exclude: OF_THE_BOOK,
          testTimeout: A_SLOW_MACHINE_MS,
        },
      },
      {
        test: {
          name: "book",
          include: OF_THE_BOOK,
          globalSetup: "tests/setup/build-books.ts",
          testTimeout: A_SLOW_MACHINE_MS,
        },
      },
    ],
  },
});
