import { describe, expect, it } from "vitest";
import { type Colours, colours, cssSizes, cssVariables, type ThemeName } from "../../src/ui/tokens";

/** Relative luminance of an sRGB colour, WCAG 2.2, definition of "relative luminance". */
function luminance(hex: string): number {
  const channels = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255);
  const [r, g, b] = channels.map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

/** Contrast ratio, WCAG 2.2: (L1 + 0.05) ÷ (L2 + 0.05). */
function contrast(one: string, other: string): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light! + 0.05) / (dark! + 0.05);
}

const themes = Object.entries(colours) as [ThemeName, Colours][];

it("the contrast formula gives 21 for black on white, as WCAG says", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 10);
});

describe.each(themes)("%s theme", (_, theme) => {
  it.each([
    ["ink", theme.ink],
    ["soft ink", theme.inkSoft],
    ["faint ink", theme.inkFaint],
    ["accent", theme.accent],
  ])("%s is text on every ground: at least 4.5 to 1 (WCAG 1.4.3)", (_name, ink) => {
    for (const ground of [theme.paper, theme.table, theme.hover, theme.accentWash])
      expect(contrast(ink, ground), `${ink} on ${ground}`).toBeGreaterThanOrEqual(4.5);
  });

  it("text on the accent can be read", () => {
    expect(contrast(theme.onAccent, theme.accent)).toBeGreaterThanOrEqual(4.5);
  });

  it.each(Object.entries(theme.verdict))(
    "the verdict %s can be read on paper and on its own wash",
    (_name, { ink, wash }) => {
      expect(contrast(ink, theme.paper)).toBeGreaterThanOrEqual(4.5);
      expect(contrast(ink, wash)).toBeGreaterThanOrEqual(4.5);
    },
  );

  it("lines that mean something stand out from the paper: at least 3 to 1 (WCAG 1.4.11)", () => {
    const { pieceLine, standLine, leg, gap, loadCentre, tippingLine, reaction, dimension, shear, moment, deflection } =
      theme.drawing;
    const lines = {
      pieceLine,
      standLine,
      leg,
      gap,
      loadCentre,
      tippingLine,
      reaction,
      dimension,
      shear,
      moment,
      deflection,
    };
    for (const [name, line] of Object.entries({ ...lines, line: theme.line }))
      expect(contrast(line, theme.paper), name).toBeGreaterThanOrEqual(3);
  });
});

it("CSS variables are named after their place, in small letters", () => {
  expect(cssVariables("dark")).toMatchObject({
    "--ink-soft": colours.dark.inkSoft,
    "--verdict-fails-ink": colours.dark.verdict.fails.ink,
    "--drawing-top-fill": colours.dark.drawing.topFill,
  });
  expect(cssSizes()["--touch"]).toBe("44px");
});
