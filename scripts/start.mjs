/** Builds the page and serves it on this machine alone; prints the address. */
import { join } from "node:path";
import { build, preview } from "vite";

const root = join(import.meta.dirname, "..");
const port = Number(process.env.PORT ?? 4173);

await build({ root, logLevel: "warn" });
const server = await preview({ root, logLevel: "warn", preview: { port, host: "127.0.0.1", strictPort: false } });
const [address] = server.resolvedUrls?.local ?? [];
console.log(`Trestleboard is at ${address}   (Ctrl+C stops it)`);
