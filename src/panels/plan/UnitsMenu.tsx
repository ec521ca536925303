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
  return (
    <Menu position="bottom-end" withinPortal>
      <Menu.Target>
        <Button variant="subtle" size="compact-md" leftSection={<Icon name="rule" />} aria-label="Units">
          {now.length}, {now.force}
        </Button>
      </Menu.Target>
      <Menu.Dropdown>
        <Menu.RadioGroup
          value={display.units}
          onChange={(units) => set({ units: units as Display["units"], length: null, force: null })}
        >
          <Choice value="us">US customary</Choice>
          <Choice value="metric">Metric</Choice>
        </Menu.RadioGroup>
        <Menu.Divider />
        <Menu.Label>Lengths in</Menu.Label>
        <Menu.RadioGroup value={now.length} onChange={(length) => set({ length: length as LengthUnit })}>
          {lengths.map(({ unit, words }) => (
            <Choice key={unit} value={unit}>
              {words}
            </Choice>
          ))}
        </Menu.RadioGroup>
        <Menu.Divider />
        <Menu.Label>Weights and forces in</Menu.Label>
        <Menu.RadioGroup value={now.force} onChange={(force) => set({ force: force as ForceUnit })}>
          {forces.map(({ unit, words }) => (
            <Choice key={unit} value={unit}>
              {words}
            </Choice>
          ))}
        </Menu.RadioGroup>
      </Menu.Dropdown>
    </Menu>
  );
}

function Choice({ value, children }: { readonly value: string; readonly children: string }) {
  return (
    <Menu.RadioItem value={value} checkIcon={<Icon name="tick" size={16} />} closeMenuOnClick>
      {children}
    </Menu.RadioItem>
  );
}
