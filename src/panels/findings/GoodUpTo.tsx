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
          </div>
        );
      const orMore = (key: keyof typeof scanEnd) => (margins[key] >= scanEnd[key] ? "at least " : "");
      return (
        <div data-pending={part.status === "pending"} className={styles.mayBePending}>
          <Heading />
          <TitleBlock>
            <Entry name="Heavier by">
              <NumberHelp name="heaviest it may prove">
                {orMore("weight")}× {margins.weight.toFixed(2)}
              </NumberHelp>
            </Entry>
            <Entry name="Tops off level by">
              <NumberHelp name="tops off level by">
                {orMore("level")}±<Quantity kind="length" value={margins.level} />
              </NumberHelp>
            </Entry>
            <Entry name="Off its marks, along">
              <NumberHelp name="off its marks along">
                {orMore("along")}±<Quantity kind="length" value={margins.along} />
              </NumberHelp>
            </Entry>
            <Entry name="Off its marks, across">
              <NumberHelp name="off its marks across">
                {orMore("across")}±<Quantity kind="length" value={margins.across} />
              </NumberHelp>
            </Entry>
            <Entry name="Pushed by">
              <NumberHelp name="greatest push">
                {orMore("push")}
                {(margins.push * 100).toFixed(0)} % of its weight
              </NumberHelp>
            </Entry>
            <Entry name="Turned end for end">
              <VerdictShape verdict={margins.turned.verdict} size={16} /> {verdictWords[margins.turned.verdict]}
            </Entry>
          </TitleBlock>
          <Disclosure summary="Without one stand, and weight added at a corner">
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
