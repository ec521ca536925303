/** Mantine dressed as a drawing: thin lines, square corners, one typeface, the colours of tokens.ts. */

import { type CSSVariablesResolver, createTheme, type MantineColorsTuple, useComputedColorScheme } from "@mantine/core";
import { type Colours, colours, cssSizes, cssVariables, type ThemeName, typeface, typeSize } from "./tokens";

/** Drawing blue from wash to ink; 8 is the accent of the light theme. */
const blue: MantineColorsTuple = [
  "#eef5fb",
  "#dbe8f4",
  "#b5cfe8",
  "#8bb5dc",
  "#669fd1",
  "#4a8fca",
  "#2c7bbd",
  "#1767a8",
  "#0b5394",
  "#073a69",
];

export const theme = createTheme({
  primaryColor: "blue",
  primaryShade: { light: 8, dark: 8 },
  colors: { blue },
  fontFamily: typeface,
  headings: { fontFamily: typeface, fontWeight: "600" },
  fontSizes: { xs: "12px", sm: `${typeSize.small}px`, md: `${typeSize.body}px`, lg: `${typeSize.heading}px` },
  spacing: { xs: "4px", sm: "8px", md: "12px", lg: "16px", xl: "24px" },
  radius: { xs: "1px", sm: "2px", md: "2px", lg: "3px", xl: "4px" },
  defaultRadius: "sm",
  shadows: { xs: "none", sm: "none", md: "0 2px 12px rgb(0 0 0 / 18%)", lg: "none", xl: "0 4px 24px rgb(0 0 0 / 24%)" },
  cursorType: "pointer",
  respectReducedMotion: true,
  focusRing: "auto",
  components: {
    // The placeholder would be a child of the menu that is none of its items; the first item takes the focus instead.
    Menu: { defaultProps: { withInitialFocusPlaceholder: false } },
  },
});

/** Our variables beside Mantine's, and Mantine's own colours led back to ours. */
export const cssVariablesResolver: CSSVariablesResolver = () => ({
  variables: cssSizes(),
  light: { ...cssVariables("light"), ...mantineColours("light") },
  dark: { ...cssVariables("dark"), ...mantineColours("dark") },
});

function mantineColours(name: ThemeName): Record<`--${string}`, string> {
  const { paper, ink, inkFaint, line, rule, verdict, hover } = colours[name];
  return {
    "--mantine-color-body": paper,
    "--mantine-color-text": ink,
    "--mantine-color-dimmed": inkFaint,
    "--mantine-color-placeholder": inkFaint,
    "--mantine-color-default": paper,
    "--mantine-color-default-hover": hover,
    "--mantine-color-default-border": line,
    "--mantine-color-default-color": ink,
    "--mantine-color-error": verdict.fails.ink,
    "--table-border-color": rule,
  };
}

/** The theme on screen and its colours; the drawing reads them here. */
export function useColours(): { readonly name: ThemeName; readonly colours: Colours } {
  const name = useComputedColorScheme("light");
  return { name, colours: colours[name] };
}
