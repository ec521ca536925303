/** The ui room's public face. */
export { cssVariablesResolver, theme, useColours } from "./theme";
export * from "./tokens";
