/** The web over a stand (docs/mechanics-tipping.md, S3 and S4). */

import type { SectionSegment, SectionStrength } from "../../plan";
import { answerOf, given, type Look, type StrengthAnswer, sectionsAt } from "./sections";

/** Safety factor on local yielding of the web: AISC 360-22 J10.2. */
export const yieldingOmega = 1.5;
/** Safety factor on local crippling of the web: AISC 360-22 J10.3. */
export const cripplingOmega = 2;

type YieldingKeys = "flangeThickness" | "fillet" | "webThickness" | "yield";
type CripplingKeys = "depth" | "flangeThickness" | "webThickness" | "yield" | "E";

/**
 * S3: nominal strength of one web against local yielding, N. AISC 360-22 J10.2, equations J10-2 and J10-3:
 * R_n = F_y·t_w·(5k + l_b), and with 2.5k where the force is at most d from the end; k = flangeThickness + fillet.
 *
 * @param bearing l_b, length of bearing along the piece, m.
 * @param nearEnd the force is at most d from the end.
 */
export function webYielding(
  section: Required<Pick<SectionStrength, YieldingKeys>>,
  bearing: number,
  nearEnd: boolean,
): number {
  const k = section.flangeThickness + section.fillet;
  return section.yield * section.webThickness * ((nearEnd ? 2.5 : 5) * k + bearing);
}

/**
 * S4: nominal strength of one web against local crippling, N. AISC 360-22 J10.3, equations J10-4, J10-5a and J10-5b, with
 * Q_f = 1: R_n = 0.80·t_w²·[1 + 3(l_b/d)(t_w/t_f)^1.5]·√(E·F_y·t_f/t_w); less than d/2 from the end 0.40, and there
 * 4·l_b/d − 0.2 in place of 3·l_b/d where l_b/d > 0.2.
 */
export function webCrippling(
  section: Required<Pick<SectionStrength, CripplingKeys>>,
  bearing: number,
  nearEnd: boolean,
): number {
  const { depth: d, flangeThickness: tf, webThickness: tw, E } = section;
  const spread = nearEnd && bearing / d > 0.2 ? (4 * bearing) / d - 0.2 : (3 * bearing) / d;
  const share = nearEnd ? 0.4 : 0.8;
  return share * tw ** 2 * (1 + spread * (tw / tf) ** 1.5) * Math.sqrt((E * section.yield * tf) / tw);
}

/** A stand under the piece, as the web sees it. */
export interface WebForce {
  /** Of the stand's middle, m. */
  readonly s: number;
  /** The ends of the parts that it bears on, m. */
  readonly parts: readonly { readonly from: number; readonly to: number }[];
  /** Width of its top along the piece, m. */
  readonly topWidth: number;
  /** Greatest reaction × set-down factor, N. */
  readonly force: number;
}

/**
 * The force on the web over a stand against R_n ÷ 1.50, N. At a border of two sections, and on two parts, the weaker.
 * Presumes that the piece is kept from rolling over. Sections with two webs are unknown: J10 speaks of one.
 */
export function webYieldingOver(sections: readonly SectionSegment[], stand: WebForce): StrengthAnswer {
  return over(sections, stand, (section, fromEnd) => {
    const data = given(section, ["depth", "flangeThickness", "fillet", "webThickness", "yield"]);
    if (!data.whole) return { missing: data.missing };
    const nominal = webYielding(data.section, stand.topWidth, fromEnd <= data.section.depth);
    return { value: stand.force, limit: nominal / yieldingOmega, s: stand.s };
  });
}

/** The force on the web over a stand against R_n ÷ 2.00, N; otherwise as `webYieldingOver`. */
export function webCripplingOver(sections: readonly SectionSegment[], stand: WebForce): StrengthAnswer {
  return over(sections, stand, (section, fromEnd) => {
    const data = given(section, ["depth", "flangeThickness", "webThickness", "yield", "E"]);
    if (!data.whole) return { missing: data.missing };
    const nominal = webCrippling(data.section, stand.topWidth, fromEnd < data.section.depth / 2);
    return { value: stand.force, limit: nominal / cripplingOmega, s: stand.s };
  });
}

function over(
  sections: readonly SectionSegment[],
  stand: WebForce,
  look: (section: SectionSegment, fromEnd: number) => Look,
): StrengthAnswer {
  return answerOf(
    stand.parts.flatMap(({ from, to }) => {
      const s = Math.min(Math.max(stand.s, from), to);
      const fromEnd = Math.min(s - from, to - s);
      const own = sections.filter((section) => section.from < to && section.to > from);
      return sectionsAt(own, s).map((section) =>
        (section.webs ?? 1) === 1 ? look(section, fromEnd) : { missing: ["webs" as const] },
      );
    }),
  );
}
