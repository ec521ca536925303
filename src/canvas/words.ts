/** What the drawings write: quantities in the plan's display units. */

import { type Display, formatQuantity, type Mass } from "../plan";

export const lengthWords = (metres: number, display: Display): string => formatQuantity(metres, "length", display);

export const forceWords = (newtons: number, display: Display): string => formatQuantity(newtons, "force", display);

export const momentWords = (newtonMetres: number, display: Display): string =>
  formatQuantity(newtonMetres, "moment", display);

/** Name and weight; a line mass with its whole weight. */
export function massWords(mass: Mass, display: Display): string {
  const kilograms =
    mass.kind === "point" ? mass.mass : ((mass.massPerLength[0] + mass.massPerLength[1]) / 2) * (mass.to - mass.from);
  return `${mass.name} ${formatQuantity(kilograms, "mass", display)}`;
}
