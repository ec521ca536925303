/** Beside the verdict: what the plan still takes before something new fails. */

import type { GoodUpTo, Part } from "../../checks";
import { reportInView } from "../../store";
import { Disclosure, Entry, Quantity, TitleBlock, useFormat, VerdictShape, verdictWords } from "../../ui";
import { useCalm } from "../connect";
import { NumberHelp } from "../help/NumberHelp";
import styles from "../panels.module.css";
import { Working } from "./Working";

export function GoodUpToPanel() {
  const part = useCalm((state) => reportInView(state).margins);
  return <GoodUpToView part={part} />;
}

/** What stands there before the numbers have come, so that they push nothing along. */
const names = {
  weight: "Heavier by",
  level: "Tops off level by",
  along: "Off its marks, along",
  across: "Off its marks, across",
  push: "Pushed by",
  turned: "Turned end for end",
} as const;
const losses = "Without one stand, and weight added at a corner";

function Heading() {
  return (
    <div className={styles.blockHead}>
      <h2 className={styles.blockTitle}>Good up to</h2>
      <Working />
    </div>
  );
}

/** The ends of the scans: a value there means at least so much. */
const scanEnd = { weight: 3, level: 0.05, along: 1, across: 1, push: 0.5 } as const;

export function GoodUpToView({ part }: { readonly part: Part<GoodUpTo> }) {
  const format = useFormat();
  switch (part.status) {
    case "failed":
      return <p className={styles.quiet}>Good up to: {part.why}</p>;
    case "pending":
    case "known": {
      const margins = part.status === "known" ? part.value : part.last;
      if (margins === null)
        return (
          <div className={styles.mayBePending} data-pending="true">
            <Heading />
            <TitleBlock>
              {Object.values(names).map((name) => (
                <Entry key={name} name={name}>
                  –
                </Entry>
              ))}
            </TitleBlock>
            <Disclosure summary={losses}>
              <p className={styles.quiet}>Not known yet.</p>
            </Disclosure>
          </div>
        );
      const orMore = (key: keyof typeof scanEnd) => (margins[key] >= scanEnd[key] ? "at least " : "");
      return (
        <div data-pending={part.status === "pending"} className={styles.mayBePending}>
          <Heading />
          <TitleBlock>
            <Entry name={names.weight}>
              <NumberHelp name="heaviest it may prove">
                {orMore("weight")}× {margins.weight.toFixed(2)}
              </NumberHelp>
            </Entry>
            <Entry name={names.level}>
              <NumberHelp name="tops off level by">
                {orMore("level")}±<Quantity kind="length" value={margins.level} />
              </NumberHelp>
            </Entry>
            <Entry name={names.along}>
              <NumberHelp name="off its marks along">
                {orMore("along")}±<Quantity kind="length" value={margins.along} />
              </NumberHelp>
            </Entry>
            <Entry name={names.across}>
              <NumberHelp name="off its marks across">
                {orMore("across")}±<Quantity kind="length" value={margins.across} />
              </NumberHelp>
            </Entry>
            <Entry name={names.push}>
              <NumberHelp name="greatest push">
                {orMore("push")}
                {(margins.push * 100).toFixed(0)} % of its weight
              </NumberHelp>
            </Entry>
            <Entry name={names.turned}>
              <VerdictShape verdict={margins.turned.verdict} size={16} /> {verdictWords[margins.turned.verdict]}
            </Entry>
          </TitleBlock>
          <Disclosure summary={losses}>
            <ul className={styles.plainList}>
              {margins.without.map(({ stand, verdict, utilisation }) => (
                <li key={stand}>
                  <VerdictShape verdict={verdict} size={16} /> Without {stand}: {verdictWords[verdict]}
                  {utilisation !== null && (
                    <>
                      , at most{" "}
                      <NumberHelp name="% of rating without it" stand={stand}>
                        {(utilisation * 100).toFixed(0)} % of rating
                      </NumberHelp>
                    </>
                  )}
                </li>
              ))}
              {margins.addedLoad.map(({ s, t, value }, corner) => (
                <li key={`${s} ${t}`}>
                  At {format(s, "length")} along, {format(t, "length")} across:{" "}
                  <NumberHelp name="weight added at a corner" corner={corner}>
                    {format(value, "force")}
                  </NumberHelp>{" "}
                  more
                </li>
              ))}
            </ul>
          </Disclosure>
        </div>
      );
    }
    default:
      return part satisfies never;
  }
}
