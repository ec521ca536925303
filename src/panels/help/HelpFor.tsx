/** Help on a number: a small button that opens its formula, its source and this plan's values. */

import { ActionIcon, Popover } from "@mantine/core";
import { Icon } from "../../ui";
import { type HelpEntry, helpEntries } from "./entries";
import helpStyles from "./help.module.css";

export function HelpFor({ entry }: { readonly entry: HelpEntry }) {
  const { title, text } = helpEntries[entry];
  return (
    <Popover width={320} position="bottom-end" withArrow shadow="md" trapFocus returnFocus>
      <Popover.Target>
        <ActionIcon variant="subtle" aria-label={`About ${title}`} title={`About ${title}`}>
          <Icon name="help" />
        </ActionIcon>
      </Popover.Target>
      {/* Escape closes the help alone, not the window that it stands on. */}
      <Popover.Dropdown data-mantine-stop-propagation>
        <div className={helpStyles.help}>
          <h3>{title}</h3>
          {text.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
      </Popover.Dropdown>
    </Popover>
  );
}
