/** Two sets of tests: those of the engine need nothing, those of the book share one that is built beforehand. */
import { defineConfig } from "vitest/config";

const OF_THE_BOOK = ["tests/build/**/*.test.ts", "tests/browser/**/*.test.ts"];

/** No test measures time by a limit: a limit only ends what hangs. */
const ON_A_SLOW_MACHINE = {
  testTimeout: 180_000,
  hookTimeout: 180_000,
  expect: { poll: { timeout: 30_000 } },
};

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "engine",
          include: ["tests/**/*.test.ts"],
          exclude: OF_THE_BOOK,
          ...ON_A_SLOW_MACHINE,
        },
      },
      {
        test: {
          name: "book",
          include: OF_THE_BOOK,
          globalSetup: "tests/setup/build-books.ts",
          ...ON_A_SLOW_MACHINE,
        },
      },
    ],
  },
});
