/** Numbers of the unknowns: reactions, gaps, variables of the box, one parameter, the constant 1. */
export class Unknowns {
  readonly contacts: number;
  readonly variables: number;
  constructor(contacts: number, variables: number) {
    this.contacts = contacts;
    this.variables = variables;
  }
  reaction(contact: number): number {
    return contact;
  }
  gap(contact: number): number {
    return this.contacts + contact;
  }
  variable(index: number): number {
    return 2 * this.contacts + index;
  }
  get parameter(): number {
    return 2 * this.contacts + this.variables;
  }
  get one(): number {
    return this.parameter + 1;
  }
  get count(): number {
    return this.parameter + 2;
  }
  isGap(unknown: number): boolean {
    return unknown >= this.contacts && unknown < 2 * this.contacts;
  }
  /** The other one of the pair of which one must be 0; −1 for what is no reaction or gap. */
  partner(unknown: number): number {
    if (unknown < this.contacts) return unknown + this.contacts;
    return unknown < 2 * this.contacts ? unknown - this.contacts : -1;
  }
}
