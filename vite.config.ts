import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { chunkAddress } from "./scripts/chunkAddress.ts";

export default defineConfig({
  base: "./",
  plugins: [chunkAddress(), react()],
  build: {
    target: "es2022",
    rolldownOptions: {
      treeshake: {
        // The package does not say so itself: its files only define things, so what nothing uses can stay behind.
        moduleSideEffects: [{ test: /node_modules\/clipper2-ts\//, sideEffects: false }],
      },
    },
  },
});
