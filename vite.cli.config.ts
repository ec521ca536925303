import { chmodSync } from "node:fs";
import { join } from "node:path";
import { defineConfig, type Plugin } from "vite";

/** `bin` runs the file itself, so it has to be executable. The entry's first line (#!) survives the build. */
const executable: Plugin = {
  name: "executable",
  writeBundle({ dir }, bundle) {
    for (const file of Object.values(bundle))
      if (file.type === "chunk" && file.isEntry) chmodSync(join(dir ?? ".", file.fileName), 0o755);
  },
};

export default defineConfig({
  publicDir: false,
  build: { ssr: "src/cli/main.ts", outDir: "dist-cli", target: "node20", emptyOutDir: true },
  ssr: { noExternal: true },
  plugins: [executable],
});
