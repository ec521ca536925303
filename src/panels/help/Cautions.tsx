/** The cautions: once a list, where the decision is made. */

import { cautions } from "../../checks";
import { Disclosure } from "../../ui";
import styles from "../panels.module.css";

export function Cautions() {
  return (
    <Disclosure summary="Before anyone relies on this">
      <ul className={styles.plainList}>
        {cautions.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </Disclosure>
  );
}
