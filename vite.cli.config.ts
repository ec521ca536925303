import { defineConfig } from "vite";

export default defineConfig({
  publicDir: false,
  build: { ssr: "src/cli/main.ts", outDir: "dist-cli", target: "node20", emptyOutDir: true },
  ssr: { noExternal: true },
});
