import type { MantineColorSchemeManager } from "@mantine/core";

/** The theme is held by the editor's view, nowhere else. */
export const themeManager: MantineColorSchemeManager = {
  get: (standard) => standard,
  set: () => {},
  subscribe: () => {},
  unsubscribe: () => {},
  clear: () => {},
};
