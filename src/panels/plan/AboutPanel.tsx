/** What the program is, what it rests on, and what it does not do. */

import { cautions } from "../../checks";
import { Section } from "../../ui";
import styles from "../panels.module.css";

export function AboutPanel() {
  return (
    <Section title="About">
      <ul className={styles.plainList}>
        {cautions.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <p className={styles.quiet}>
        Every number tells its formula and source where it is touched. The published checks that the program is held
        against are listed in docs/verification.md, the mechanics in docs/mechanics.md. Plans stay in this browser and
        in the files you save; nothing is sent anywhere. MIT licence. Typeface: IBM Plex Sans Condensed, SIL Open Font
        License 1.1.
      </p>
    </Section>
  );
}
