/** What the drawings write: quantities in the plan's display units. */

import type { Display, Mass } from "../plan";

export function lengthWords(metres: number, display: Display): string {
  return display.units === "us" ? `${(metres / 0.3048).toFixed(2)} ft` : `${Math.round(metres * 1000)} mm`;
}
export function smallLengthWords(metres: number, display: Display): string {
  return display.units === "us" ? `${(metres / 0.0254).toFixed(3)} in` : `${(metres * 1000).toFixed(1)} mm`;
}
export function forceWords(newtons: number, display: Display): string {
  return display.units === "us"
    ? `${Math.round(newtons / 4.4482216152605).toLocaleString("en")} lb`
    : `${(newtons / 1000).toFixed(2)} kN`;
}
export function momentWords(newtonMetres: number, display: Display): string {
  return display.units === "us"
    ? `${Math.round(newtonMetres / 1.3558179483).toLocaleString("en")} lb·ft`
    : `${(newtonMetres / 1000).toFixed(1)} kN·m`;
}
export function massWords(mass: Mass, display: Display): string {
  const kg =
    mass.kind === "point" ? mass.mass : ((mass.massPerLength[0] + mass.massPerLength[1]) / 2) * (mass.to - mass.from);
  return `${mass.name} ${display.units === "us" ? `${Math.round(kg / 0.45359237).toLocaleString("en")} lb` : `${Math.round(kg)} kg`}`;
}
