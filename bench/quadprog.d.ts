/** The dense quadratic solver that the level solve is measured against; indices begin at 1. */
declare module "quadprog" {
  /** min ½·xᵀD·x − dᵀx with Aᵀx ≥ b, the first `meq` rows equations. `message` is empty where it was solved. */
  export function solveQP(
    D: number[][],
    d: readonly number[],
    A: number[][],
    b: readonly number[],
    meq: number,
  ): { readonly solution: number[]; readonly message: string };
}
