import type { Plugin } from "vite";

const ending = "?chunk";

/**
 * `import address from "./entry?chunk"`: the address of a module built as a chunk of the page's own build. A worker made from
 * it shares the engine's chunks with the page, where a bundle of its own would be downloaded with the engine once more.
 */
export function chunkAddress(): Plugin {
  let serving = false;
  return {
    name: "chunk-address",
    enforce: "pre",
    configResolved: ({ command }) => {
      serving = command === "serve";
    },
    async resolveId(source, importer) {
      if (!source.endsWith(ending)) return null;
      const resolved = await this.resolve(source.slice(0, -ending.length), importer);
      return resolved === null ? null : `${resolved.id}${ending}`;
    },
    load(id) {
      if (!id.endsWith(ending)) return null;
      const file = id.slice(0, -ending.length);
      if (serving) return `export default ${JSON.stringify(`/@fs${file}`)};`;
      const chunk = this.emitFile({ type: "chunk", id: file });
      return `export default import.meta.ROLLUP_FILE_URL_${chunk};`;
    },
  };
}
