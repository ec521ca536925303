/** The answers of the independent reference, and the result file they are compared with, as JSON. */

export interface Extremes {
  readonly most: { readonly value: number; readonly s: number };
  readonly least: { readonly value: number; readonly s: number };
}

export interface WitnessJson {
  readonly heights: Readonly<Record<string, number>>;
  readonly tilts: Readonly<Record<string, number>>;
  readonly bows: Readonly<Record<string, number>>;
  readonly masses: Readonly<Record<string, number>>;
  readonly centres: Readonly<Record<string, readonly [number, number]>>;
  readonly loads: Readonly<Record<string, number>>;
  readonly stiffness: number;
}

interface StandJson {
  readonly stand: string;
  readonly s?: number;
  readonly t?: number;
  readonly mostAt: WitnessJson | null;
  readonly leastAt: WitnessJson | null;
  readonly centre: { readonly s: number; readonly t: number } | null;
  readonly legFrames: readonly [number, number] | null;
  readonly legFramesMost: readonly [number, number] | null;
  readonly contact: readonly (readonly [number, number])[];
  readonly settlement: number | null;
  readonly bearingPressure: number | null;
  readonly feet: readonly { readonly x: number; readonly y: number; readonly force: number | null }[];
}

interface ReactionJson {
  readonly level: number;
  readonly least: number | null;
  readonly most: number | null;
  readonly staticsLeast: number;
  readonly staticsMost: number;
}

export interface ExpectedStand extends StandJson {
  readonly W: number;
  readonly reaction: ReactionJson | null;
  readonly proved: {
    readonly least: number;
    readonly most: number;
    readonly legFramesMost: readonly [number, number];
  } | null;
}

export interface ResultStand extends StandJson {
  readonly utilisation: number | null;
  readonly reaction:
    | (ReactionJson & { readonly certified: { readonly least: number; readonly most: number } | null })
    | null;
}

export interface EdgeJson {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly distance: number | null;
  readonly reserve: number | null;
  readonly margin: number | null;
}

interface PartJson<Edge> {
  readonly from: number;
  readonly to: number;
  readonly stable: boolean;
  readonly weight: number;
  readonly resultant: { readonly force: number; readonly s: number | null; readonly t: number | null };
  readonly moment: Extremes | null;
  readonly shear: Extremes | null;
  readonly torque: Extremes | null;
  readonly deflection: Extremes | null;
  readonly droop: readonly [number, number] | null;
  readonly twist: Extremes | null;
  readonly tipping: {
    readonly edges: readonly Edge[];
    readonly addedLoad: { readonly value: number; readonly s: number; readonly t: number } | null;
  };
}
export type ExpectedPart = PartJson<
  EdgeJson & { readonly righting: number | null; readonly overturning: number | null }
>;
export type ResultPart = PartJson<EdgeJson>;

interface StepJson<Stand, PartOf> {
  readonly id: string;
  readonly layout: string;
  readonly weight: number;
  readonly cg: { readonly s: number; readonly t: number; readonly z: number } | null;
  readonly stable: boolean;
  readonly estimated: readonly string[];
  readonly stands: readonly Stand[];
  readonly parts: readonly PartOf[];
}

export interface ExpectedStep extends StepJson<ExpectedStand, ExpectedPart> {
  readonly boxTips: readonly { readonly names: readonly string[]; readonly must: readonly string[] }[] | null;
}

export interface ResultStep extends StepJson<ResultStand, ResultPart> {
  readonly verdict: string;
  readonly residual: Readonly<Record<"force" | "momentS" | "momentT" | "complementarity", number>> | null;
}

export interface Expected {
  readonly case: string;
  readonly steps: readonly ExpectedStep[];
  readonly floor: Readonly<
    Record<
      string,
      {
        readonly tripZones: Readonly<Record<string, { readonly area: number; readonly reach: number }>>;
        readonly walkways: Readonly<
          Record<string, { readonly clearWidth: number; readonly withoutLegs: number; readonly required: number }>
        >;
      }
    >
  >;
}

export interface ResultJson {
  readonly format: string;
  readonly verdict: string;
  readonly steps: readonly ResultStep[];
  readonly floor: readonly {
    readonly layout: string;
    readonly tripZones: readonly {
      readonly stand: string;
      readonly polygons: readonly {
        readonly outer: readonly (readonly [number, number])[];
        readonly holes: readonly (readonly (readonly [number, number])[])[];
      }[];
      readonly area: number;
      readonly reach: number;
    }[];
    readonly walkways: readonly {
      readonly name: string;
      readonly clearWidth: number;
      readonly withoutLegs: number;
      readonly required: number;
      readonly narrowestAt: readonly [number, number] | null;
    }[];
  }[];
  readonly findings: readonly {
    readonly code: string;
    readonly verdict: string;
    readonly step: string | null;
    readonly layout: string;
    readonly stand: string | null;
    readonly message: string;
  }[];
}
