/** Two sets of tests: those of the engine need nothing, those of the book share one that is built beforehand. */
import { defineConfig } from "vitest/config";

const OF_THE_BOOK = ["tests/book/**/*.test.ts", "tests/browser/**/*.test.ts"];

export default defineConfig({
  test: {
    projects: [
      { test: { name: "engine", include: ["tests/**/*.test.ts"], exclude: OF_THE_BOOK } },
      {
        test: {
          name: "book",
          include: OF_THE_BOOK,
          globalSetup: "tests/setup/build-books.ts",
          testTimeout: 60_000,
        },
      },
    ],
  },
});
