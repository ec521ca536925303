/** The units of the screen and the sheet. The file keeps SI whatever is chosen here. */

import { Button, Menu } from "@mantine/core";
import type { Display, ForceUnit, LengthUnit } from "../../plan";
import { Icon } from "../../ui";
import { attempt, usePlan } from "../connect";

const lengths: readonly { readonly unit: LengthUnit; readonly words: string }[] = [
  { unit: "ft-in", words: "feet, inches, sixteenths" },
  { unit: "in", words: "inches" },
  { unit: "mm", words: "millimetres" },
  { unit: "m", words: "metres" },
];
const forces: readonly { readonly unit: ForceUnit; readonly words: string }[] = [
  { unit: "lb", words: "pounds" },
  { unit: "kip", words: "kips" },
  { unit: "kg", words: "kilograms" },
  { unit: "t", words: "tonnes" },
  { unit: "N", words: "newtons" },
  { unit: "kN", words: "kilonewtons" },
];

/** The units in force where a display leaves one open. */
export function unitsOf(display: Display): { readonly length: LengthUnit; readonly force: ForceUnit } {
  const us = display.units === "us";
  return { length: display.length ?? (us ? "ft-in" : "mm"), force: display.force ?? (us ? "lb" : "kN") };
}

export function UnitsMenu() {
  const { display } = usePlan();
  const now = unitsOf(display);
  const set = (change: Partial<Display>) => attempt("plan.units", { display: change });
  const mark = (on: boolean) =>
    on ? { rightSection: <Icon name="tick" size={16} />, "aria-checked": true } : { "aria-checked": false };
  return (
    <Menu position="bottom-end" withinPortal>
      <Menu.Target>
        <Button variant="subtle" size="compact-md" leftSection={<Icon name="rule" />} aria-label="Units">
          {now.length}, {now.force}
        </Button>
      </Menu.Target>
      <Menu.Dropdown>
        <Menu.Item
          role="menuitemradio"
          {...mark(display.units === "us")}
          onClick={() => set({ units: "us", length: null, force: null })}
        >
          US customary
        </Menu.Item>
        <Menu.Item
          role="menuitemradio"
          {...mark(display.units === "metric")}
          onClick={() => set({ units: "metric", length: null, force: null })}
        >
          Metric
        </Menu.Item>
        <Menu.Divider />
        <Menu.Label>Lengths in</Menu.Label>
        {lengths.map(({ unit, words }) => (
          <Menu.Item
            key={unit}
            role="menuitemradio"
            {...mark(now.length === unit)}
            onClick={() => set({ length: unit })}
          >
            {words}
          </Menu.Item>
        ))}
        <Menu.Divider />
        <Menu.Label>Weights and forces in</Menu.Label>
        {forces.map(({ unit, words }) => (
          <Menu.Item key={unit} role="menuitemradio" {...mark(now.force === unit)} onClick={() => set({ force: unit })}>
            {words}
          </Menu.Item>
        ))}
      </Menu.Dropdown>
    </Menu>
  );
}
