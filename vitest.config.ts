import { defineConfig } from "vitest/config";
import { chunkAddress } from "./scripts/chunkAddress.ts";

export default defineConfig({
  test: {
    projects: [
      {
        plugins: [chunkAddress()],
        test: {
          name: "engine",
          environment: "node",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/browser/**"],
          testTimeout: 60_000,
        },
      },
    ],
  },
});
