/** Our own small set of icons: strokes on a 20 px grid, drawn with the pen of the drawings. */

const strokes = {
  add: "M10 4v12M4 10h12",
  remove: "M4 10h12",
  bin: "M4 6h12M8 6V4h4v2M6 6l.6 10h6.8L14 6M8.7 9v4.5M11.3 9v4.5",
  close: "M5 5l10 10M15 5L5 15",
  tick: "M4.5 10.5l3.5 3.5 7.5-8",
  undo: "M7 4L3.5 7.5 7 11M3.5 7.5H12a4 4 0 0 1 0 8H8",
  redo: "M13 4l3.5 3.5L13 11M16.5 7.5H8a4 4 0 0 0 0 8h4",
  open: "M3 15.5v-11h5l1.5 2H17v9zM3 9h14",
  save: "M10 3v9M6.5 8.5L10 12l3.5-3.5M3.5 13v3.5h13V13",
  sheet: "M5 3h7l3 3v11H5zM12 3v3h3M7.5 10h5M7.5 13h5",
  fit: "M3 7V3h4M13 3h4v4M17 13v4h-4M7 17H3v-4M7 10h6",
  zoomIn: "M9 4.5a4.5 4.5 0 1 0 0 9 4.5 4.5 0 0 0 0-9M12.4 12.4L17 17M9 7v4M7 9h4",
  zoomOut: "M9 4.5a4.5 4.5 0 1 0 0 9 4.5 4.5 0 0 0 0-9M12.4 12.4L17 17M7 9h4",
  search: "M9 4.5a4.5 4.5 0 1 0 0 9 4.5 4.5 0 0 0 0-9M12.4 12.4L17 17",
  help: "M7.4 7.6a2.6 2.6 0 1 1 3.9 2.3c-.9.5-1.3 1-1.3 2M10 14.4v.2M10 2.8a7.2 7.2 0 1 0 0 14.4 7.2 7.2 0 0 0 0-14.4",
  chevronDown: "M5 8l5 5 5-5",
  chevronRight: "M8 5l5 5-5 5",
  up: "M10 16V4M5 9l5-5 5 5",
  down: "M10 4v12M5 11l5 5 5-5",
  menu: "M3 6h14M3 10h14M3 14h14",
  more: "M5 10h.01M10 10h.01M15 10h.01",
  sun: "M10 6.5a3.5 3.5 0 1 0 0 7 3.5 3.5 0 0 0 0-7M10 2.5v1.5M10 16v1.5M2.5 10H4M16 10h1.5M4.7 4.7l1 1M14.3 14.3l1 1M15.3 4.7l-1 1M5.7 14.3l-1 1",
  moon: "M16 11.5A6.5 6.5 0 0 1 8.5 4a6.5 6.5 0 1 0 7.5 7.5z",
  history: "M4 5v3.5h3.5M4.4 8.5A6.2 6.2 0 1 1 4 11.5M10 7v3.5l2.5 1.5",
  stand: "M3 5h14v2H3zM6 7l-2 9M14 7l2 9M5.3 12h9.4",
  piece: "M2 7h16v5H2zM2 9.5h16",
  mass: "M6 8h8l2 8.5H4zM10 8a2 2 0 1 0 0-4 2 2 0 0 0 0 4",
  step: "M3 16.5h4v-4h4v-4h4v-4h2.5",
  layers: "M10 3.5L3 7l7 3.5L17 7zM3 10l7 3.5 7-3.5M3 13l7 3.5 7-3.5",
  rule: "M2.5 7h15v6h-15zM5.5 7v2.5M8.5 7v3.5M11.5 7v2.5M14.5 7v3.5",
  mend: "M12 3.5a4 4 0 0 0-4 5.3L3 13.8 6.2 17l5-5a4 4 0 0 0 5.2-5.2L14 9.3 10.7 6z",
  copy: "M7 7V3.5h9.5V13H13M3.5 7H13v9.5H3.5z",
  mirror: "M10 3v14M8 6L3 14h5zM12 6l5 8h-5z",
  spread: "M3 4v12M17 4v12M7.7 7v6M12.3 7v6",
  turn: "M15.5 5.5V9H12M15 9a5.8 5.8 0 1 0 .5 4",
  person: "M10 2.8a2 2 0 1 0 0 4 2 2 0 0 0 0-4M6.5 9.2h7M10 7v5.5M10 12.5l-2.6 5M10 12.5l2.6 5",
  keyboard: "M2.5 5.5h15v9h-15zM5 8.5h.01M8.3 8.5h.01M11.6 8.5h.01M15 8.5h.01M6.5 11.5h7",
  bay: "M3 3h14v14H3zM3 7h6M12 17v-6h5",
  shim: "M3 13h14L3 9zM3 15.5h14",
  draw: "M4 16l1-4 8.5-8.5 3 3L8 15zM11.5 5.5l3 3",
  send: "M4 10h11M11 6l4 4-4 4",
} as const;

export type IconName = keyof typeof strokes;

/** An icon beside words; it says nothing by itself and is hidden from screen readers. */
export function Icon({ name, size = 20 }: { readonly name: IconName; readonly size?: number }) {
  return (
    <svg
      aria-hidden="true"
      focusable="false"
      width={size}
      height={size}
      viewBox="0 0 20 20"
      fill="none"
      stroke="currentColor"
      strokeWidth={name === "more" ? 2.4 : 1.5}
      strokeLinecap="round"
      strokeLinejoin="round"
    >
      <path d={strokes[name]} />
    </svg>
  );
}
