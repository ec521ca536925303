import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { chunkAddress } from "./scripts/chunkAddress.ts";

export default defineConfig({
  base: "./",
  plugins: [chunkAddress(), react()],
  build: { target: "es2022" },
});
