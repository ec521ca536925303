/**
 * The look as constants: one place for the drawing (Konva reads them) and the page (`cssVariables` writes them out).
 * Colours are read in sun and by the colour-blind: text has at least 4.5 : 1 on its ground, lines that mean something
 * 3 : 1, and nothing is told by colour alone (tests/ui/tokens.test.ts).
 */

export type ThemeName = "light" | "dark";

/** The four verdicts, and a fifth face for what is still being computed. */
export type VerdictFace = "holds" | "close" | "unknown" | "fails" | "pending";

/** One verdict's ink (word, outline of its shape) and wash (ground behind it). */
export interface VerdictColour {
  readonly ink: string;
  readonly wash: string;
}

export interface Colours {
  /** Ground of the drawings and of panels. */
  readonly paper: string;
  /** Ground of the page around them. */
  readonly table: string;
  /** A field or a row under the pointer. */
  readonly hover: string;
  readonly ink: string;
  readonly inkSoft: string;
  readonly inkFaint: string;
  /** Hairlines that only divide. */
  readonly rule: string;
  /** Lines that mean something: borders of fields, axes. */
  readonly line: string;
  /** What is chosen, and what can be pressed. */
  readonly accent: string;
  readonly accentWash: string;
  /** Text on the accent. */
  readonly onAccent: string;
  readonly verdict: Readonly<Record<VerdictFace, VerdictColour>>;
  readonly drawing: DrawingColours;
}

/** Colours by what is drawn. */
export interface DrawingColours {
  readonly grid: string;
  readonly floor: string;
  readonly pieceFill: string;
  readonly pieceLine: string;
  /** Parts and masses that are not there in the step. */
  readonly absent: string;
  readonly standFill: string;
  readonly standLine: string;
  readonly topFill: string;
  readonly leg: string;
  readonly shim: string;
  readonly gap: string;
  readonly bearingArea: string;
  readonly keepOff: string;
  readonly keepClear: string;
  readonly mass: string;
  readonly centreOfGravity: string;
  readonly loadCentre: string;
  readonly tippingLine: string;
  readonly reaction: string;
  readonly dimension: string;
  readonly snap: string;
  readonly tripZone: string;
  readonly walkway: string;
  readonly pinch: string;
  readonly obstacle: string;
  readonly noFoot: string;
  readonly bayLine: string;
  readonly shear: string;
  readonly moment: string;
  readonly deflection: string;
  /** Where a person may stand, from least to most. */
  readonly standing: readonly [string, string, string, string];
}

const light: Colours = {
  paper: "#ffffff",
  table: "#f1f4f6",
  hover: "#eef3f7",
  ink: "#13202a",
  inkSoft: "#40505c",
  inkFaint: "#5b6a75",
  rule: "#cfd7dc",
  line: "#7c8b96",
  accent: "#0b5394",
  accentWash: "#e0ecf7",
  onAccent: "#ffffff",
  verdict: {
    holds: { ink: "#00635a", wash: "#dcf1ee" },
    close: { ink: "#7a4f00", wash: "#fdecc4" },
    unknown: { ink: "#54468c", wash: "#ebe7f7" },
    fails: { ink: "#b0190c", wash: "#fce3df" },
    pending: { ink: "#5b6a75", wash: "#eef1f3" },
  },
  drawing: {
    grid: "#e6ebee",
    floor: "#40505c",
    pieceFill: "#dfeaf2",
    pieceLine: "#173a56",
    absent: "#8b99a3",
    standFill: "#fbf0d6",
    standLine: "#5c4308",
    topFill: "#e7c987",
    leg: "#8a6a22",
    shim: "#b0190c",
    gap: "#b0190c",
    bearingArea: "#00635a",
    keepOff: "#b0190c",
    keepClear: "#8a5a00",
    mass: "#40505c",
    centreOfGravity: "#13202a",
    loadCentre: "#0b5394",
    tippingLine: "#0b5394",
    reaction: "#0b5394",
    dimension: "#40505c",
    snap: "#a0238a",
    tripZone: "#f3d9a4",
    walkway: "#00635a",
    pinch: "#b0190c",
    obstacle: "#9aa7b0",
    noFoot: "#b0190c",
    bayLine: "#13202a",
    shear: "#6a4fa3",
    moment: "#0b5394",
    deflection: "#00635a",
    standing: ["#f2b8ae", "#f7dca6", "#d5e6c4", "#a8d5cd"],
  },
};

const dark: Colours = {
  paper: "#121a20",
  table: "#0b1115",
  hover: "#1b262e",
  ink: "#e9eff3",
  inkSoft: "#bac7cf",
  inkFaint: "#96a5af",
  rule: "#2c3943",
  line: "#6f808c",
  accent: "#7cbcf5",
  accentWash: "#17344c",
  onAccent: "#07121b",
  verdict: {
    holds: { ink: "#5fd6c2", wash: "#0f3a35" },
    close: { ink: "#f6c04e", wash: "#42310a" },
    unknown: { ink: "#bfb0f5", wash: "#2f2853" },
    fails: { ink: "#ff9184", wash: "#4d1a14" },
    pending: { ink: "#a3b1ba", wash: "#222c34" },
  },
  drawing: {
    grid: "#1b252c",
    floor: "#bac7cf",
    pieceFill: "#1e3444",
    pieceLine: "#a9d0ee",
    absent: "#6f808c",
    standFill: "#352b14",
    standLine: "#e9c877",
    topFill: "#7a6127",
    leg: "#c7a24c",
    shim: "#ff9184",
    gap: "#ff9184",
    bearingArea: "#5fd6c2",
    keepOff: "#ff9184",
    keepClear: "#f6c04e",
    mass: "#bac7cf",
    centreOfGravity: "#e9eff3",
    loadCentre: "#7cbcf5",
    tippingLine: "#7cbcf5",
    reaction: "#7cbcf5",
    dimension: "#bac7cf",
    snap: "#f29ae0",
    tripZone: "#4a3a16",
    walkway: "#5fd6c2",
    pinch: "#ff9184",
    obstacle: "#56646e",
    noFoot: "#ff9184",
    bayLine: "#e9eff3",
    shear: "#c3aef2",
    moment: "#7cbcf5",
    deflection: "#5fd6c2",
    standing: ["#6b2c22", "#63491a", "#3a5227", "#1d544c"],
  },
};

export const colours: Readonly<Record<ThemeName, Colours>> = { light, dark };

/** Distances, px: multiples of the 4 px grid. */
export const space = { half: 2, one: 4, two: 8, three: 12, four: 16, six: 24, eight: 32, twelve: 48 } as const;

/** Line weights of the drawings, px: thin for what measures, heavy for what is. */
export const lineWeight = { hair: 0.5, thin: 1, outline: 1.5, heavy: 2.25, chosen: 3 } as const;

/** Dash patterns, px: by the custom of drawings. */
export const dash = {
  hidden: [6, 4],
  centre: [16, 4, 3, 4],
  zone: [3, 3],
  absent: [2, 4],
} as const;

/** Extra width that a thin line answers to, px: for a mouse and for a finger. */
export const hitWidth = { mouse: 12, touch: 32 } as const;

/** The one typeface: figures of equal width, so columns of numbers stand straight on canvas too. */
export const typeface =
  '"IBM Plex Sans Condensed", "Roboto Condensed", "Arial Narrow", "Liberation Sans Narrow", system-ui, sans-serif';

/** Type sizes, px. */
export const typeSize = { small: 13, body: 15, heading: 16, title: 20, display: 28 } as const;

/** Weights of the one typeface that are bundled. */
export const typeWeight = { regular: 400, strong: 600 } as const;

/** Least size of what a finger touches, px. */
export const touchTarget = 44;

/** How long a picture takes to settle after a mend, ms. */
export const settleTime = 400;

/** Width below which the page is one column, and below which panels lie over the drawing, px. */
export const breakpoint = { phone: 600, tablet: 1100 } as const;

function flatten(prefix: string, value: unknown, into: Record<string, string>): void {
  if (typeof value === "string") into[prefix] = value;
  else if (typeof value === "object" && value !== null)
    for (const [key, inner] of Object.entries(value))
      flatten(`${prefix}-${key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`, inner, into);
}

/** The colours of a theme as CSS variables: `--paper`, `--ink-soft`, `--verdict-fails-ink`, `--drawing-leg` … */
export function cssVariables(theme: ThemeName): Record<`--${string}`, string> {
  const variables: Record<string, string> = {};
  flatten("-", colours[theme], variables);
  return variables as Record<`--${string}`, string>;
}

/** Sizes as CSS variables, the same in both themes. */
export function cssSizes(): Record<`--${string}`, string> {
  const sizes: Record<`--${string}`, string> = { "--touch": `${touchTarget}px` };
  for (const [name, value] of Object.entries(typeSize)) sizes[`--type-${name}`] = `${value}px`;
  for (const [name, value] of Object.entries(space)) sizes[`--space-${name}`] = `${value}px`;
  return sizes;
}
