/** The worker room's public face for the page. */
export { type Ask, type ClientOptions, createClient, type EngineClient, type Progress, startEngine } from "./client";
export { createEngine } from "./engine";
export type { Engine, Question, Reply, Subject } from "./protocol";
export type { Search } from "./search";
export { createSearch } from "./search";
export { startSearches } from "./searchClient";
