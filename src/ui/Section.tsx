/** The frame of a panel's contents: a thin rule, a heading, room. */

import { type ReactNode, useEffect, useId, useState } from "react";
import { Icon } from "./icons";
import styles from "./ui.module.css";

/** A headed stretch of a panel. `level` is the heading's rank in the page. */
export function Section({
  title,
  level = 2,
  actions,
  children,
}: {
  readonly title: string;
  readonly level?: 2 | 3;
  readonly actions?: ReactNode;
  readonly children: ReactNode;
}) {
  const id = useId();
  const Heading = `h${level}` as const;
  return (
    <section className={styles.section} aria-labelledby={id}>
      <header className={styles.sectionHeader}>
        <Heading id={id} className={styles.sectionTitle}>
          {title}
        </Heading>
        {actions && <div className={styles.sectionActions}>{actions}</div>}
      </header>
      {children}
    </section>
  );
}

/** A stretch that folds away; closed it shows its summary line, and what is in it is not drawn. */
export function Disclosure({
  summary,
  aside,
  open = false,
  children,
}: {
  readonly summary: ReactNode;
  /** A value at the right end of the line, read while it is closed too. */
  readonly aside?: ReactNode;
  /** Opens it; closing and opening by hand goes before. */
  readonly open?: boolean;
  readonly children: ReactNode;
}) {
  const [shown, setShown] = useState(open);
  useEffect(() => {
    if (open) setShown(true);
  }, [open]);
  return (
    <details
      className={styles.disclosure}
      open={shown}
      onToggle={(event) => {
        // The event of a fold inside bubbles in React, though not in the page.
        if (event.target === event.currentTarget) setShown(event.currentTarget.open);
      }}
    >
      <summary className={styles.disclosureSummary}>
        <Icon name="chevronRight" size={16} />
        <span className={styles.disclosureWords}>{summary}</span>
        {aside !== undefined && <span className={styles.disclosureAside}>{aside}</span>}
      </summary>
      {shown && <div className={styles.disclosureBody}>{children}</div>}
    </details>
  );
}

/** A name with its value, as in a drawing's title block: the name small above. */
export function Entry({ name, children }: { readonly name: ReactNode; readonly children: ReactNode }) {
  return (
    <div className={styles.entry}>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}

/** Entries side by side, divided by thin rules. */
export function TitleBlock({ children }: { readonly children: ReactNode }) {
  return <dl className={styles.titleBlock}>{children}</dl>;
}
