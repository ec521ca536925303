/** Moves in a dictionary: along an edge as far as it goes, upward, along a complementary path, back to feasibility. */

import { type Dictionary, type Outcome, simplexTolerances } from "./dictionary";
import type { Unknowns } from "./unknowns";

const { feasible, reducedCost, pivot, step: leastStep, idle: idleAllowed } = simplexTolerances;

/** How far an edge goes and what ends it: a row, or one of the following. */
interface Edge {
  length: number;
  row: number;
}
/** The entering variable's own bound. */
const ownBound = -1;
/** Nothing. */
const endless = -2;
/** It goes no farther than was asked for. */
const tooShort = -3;

/**
 * How far column `c` can move in a direction before a basic variable meets a bound; of those that meet theirs within
 * the tolerance, the one with the largest element ends the edge. What goes no farther than `wanted` is not looked at further.
 *
 * Source: P. M. J. Harris, Mathematical Programming 5 (1973) 1–28 (two passes with a tolerance).
 */
function edgeOf(dictionary: Dictionary, c: number, direction: number, edge: Edge, wanted: number): void {
  const { T, columns, rows, rooms } = dictionary;
  edge.row = tooShort;
  edge.length = 0;
  let reach = Number.POSITIVE_INFINITY;
  for (let i = 0, k = c; i < rows; i++, k += columns) {
    const rate = T[k]! * direction;
    const size = Math.abs(rate);
    if (size <= pivot) continue;
    const room = rooms[2 * i + (rate > 0 ? 1 : 0)]! + feasible;
    if (room >= reach * size) continue;
    reach = room / size;
    if (reach <= wanted) return;
  }
  edge.row = endless;
  edge.length = reach;
  if (reach < Number.POSITIVE_INFINITY) {
    let largest = 0;
    for (let i = 0, k = c; i < rows; i++, k += columns) {
      const rate = T[k]! * direction;
      const size = Math.abs(rate);
      if (size <= pivot || size <= largest) continue;
      const room = rooms[2 * i + (rate > 0 ? 1 : 0)]!;
      if (room > reach * size) continue;
      largest = size;
      edge.row = i;
      edge.length = Math.max(0, room / size);
    }
  }
  const room = roomOf(dictionary, c, direction);
  if (room <= edge.length && room < Number.POSITIVE_INFINITY) {
    edge.length = room;
    edge.row = ownBound;
  }
}

/** How far column `c` may move in a direction before its own bound. */
function roomOf({ nonbasic, at, low, high }: Dictionary, c: number, direction: number): number {
  return direction > 0 ? high[nonbasic[c]!]! - at[c]! : at[c]! - low[nonbasic[c]!]!;
}

/** Goes to the edge's end and exchanges what meets there. */
function take(dictionary: Dictionary, c: number, direction: number, edge: Edge): void {
  const { low, high, value, basic } = dictionary;
  dictionary.move(c, direction * edge.length);
  if (edge.row < 0) return;
  // Exactly on its bound, or the rounding of every step would add up.
  const leaving = basic[edge.row]!;
  const v = value[edge.row]!;
  value[edge.row] = v - low[leaving]! < high[leaving]! - v ? low[leaving]! : high[leaving]!;
  dictionary.exchange(edge.row, c);
}

/**
 * Raises the objective along the edge that gains most, again and again. With `pairs`, only along edges that keep one of
 * every pair at 0, so that every vertex on the way is a state of equilibrium; where none improves, the vertex is a
 * local maximum over the whole box (B10). Without, to the maximum of the linear programme (B11).
 */
export function ascend(dictionary: Dictionary, pairs: Unknowns | null, allowed: number): Outcome {
  const { columns, rows, T, nonbasic, place } = dictionary;
  const costs = rows * columns;
  const until = dictionary.pivots + allowed;
  const edge: Edge = { length: 0, row: 0 };
  const best: Edge = { length: 0, row: 0 };
  let idle = 0;
  while (dictionary.pivots < until) {
    dictionary.measureRooms();
    let gain: number = leastStep;
    let column = -1;
    let idleColumn = -1;
    for (let c = 0; c < columns; c++) {
      const cost = T[costs + c]!;
      if (Math.abs(cost) < reducedCost) continue;
      const direction = cost > 0 ? 1 : -1;
      const most = roomOf(dictionary, c, direction) * Math.abs(cost);
      if (most <= leastStep || (most <= gain && column >= 0)) continue;
      const partner = pairs === null ? -1 : pairs.partner(nonbasic[c]!);
      if (partner >= 0 && place[partner]! >= 0) continue;
      edgeOf(dictionary, c, direction, edge, gain / Math.abs(cost));
      if (edge.row === endless) return "unbounded";
      const here = edge.length * Math.abs(cost);
      if (here > gain) {
        gain = here;
        column = c;
        best.length = edge.length;
        best.row = edge.row;
      } else if (here <= leastStep && (idleColumn < 0 || nonbasic[c]! < nonbasic[idleColumn]!)) {
        idleColumn = c;
      }
    }
    if (column < 0) {
      // Bland's choice: the lowest number, so that steps of no length do not go round for ever.
      if (idleColumn < 0) return "optimal";
      if (++idle > idleAllowed * rows) return "out of pivots";
      column = idleColumn;
      edgeOf(dictionary, column, T[costs + column]! > 0 ? 1 : -1, best, -1);
    } else idle = 0;
    take(dictionary, column, T[costs + column]! > 0 ? 1 : -1, best);
  }
  return "out of pivots";
}

/**
 * Takes the parameter from where it is to `target` while every pair stays complementary: whenever a reaction or a gap
 * comes to 0 its partner is let go (B9).
 *
 * Source: C. E. Lemke, Management Science 11 (1965) 681–689 (complementary pivots).
 */
export function follow(dictionary: Dictionary, pairs: Unknowns, target: number, allowed: number): Outcome {
  const { parameter } = pairs;
  const { low, high, basic, place } = dictionary;
  const edge: Edge = { length: 0, row: 0 };
  const from = dictionary.valueOf(parameter);
  low[parameter] = Math.min(from, target);
  high[parameter] = Math.max(from, target);
  const until = dictionary.pivots + allowed;
  let entering = parameter;
  let direction = target > from ? 1 : -1;
  while (dictionary.pivots < until) {
    const c = -1 - place[entering]!;
    dictionary.measureRooms();
    edgeOf(dictionary, c, direction, edge, -1);
    if (edge.row === endless) return "unbounded";
    const leaving = edge.row === ownBound ? entering : basic[edge.row]!;
    take(dictionary, c, direction, edge);
    if (leaving === parameter) {
      low[parameter] = target;
      high[parameter] = target;
      return Math.abs(dictionary.valueOf(parameter) - target) <= leastStep ? "optimal" : "infeasible";
    }
    entering = pairs.partner(leaving);
    direction = 1;
  }
  return "out of pivots";
}

/**
 * From a dictionary whose reduced costs are right but whose values pass a bound, back to feasibility; the objective
 * falls on the way and bounds the maximum from above throughout, so it stops once at or under `cutOff` (B12). Of the
 * rows that are out, the one whose repair takes the objective down most comes first.
 */
export function dualSteps(dictionary: Dictionary, cutOff: number, allowed: number): Outcome {
  const { rows, basic, value, low, high } = dictionary;
  const until = dictionary.pivots + allowed;
  let idle = 0;
  while (dictionary.pivots < until) {
    if (dictionary.objective <= cutOff) return "below cut-off";
    // After too many steps of no loss any row that is out, beginning elsewhere each time, lest they go round.
    const begin = idle > idleAllowed ? (idle * 7) % rows : 0;
    let most = -1;
    let row = -1;
    for (let n = 0; n < rows; n++) {
      const i = n + begin < rows ? n + begin : n + begin - rows;
      const v = value[i]!;
      const over = Math.max(low[basic[i]!]! - v, v - high[basic[i]!]!);
      if (over <= feasible) continue;
      const loss = lossOf(dictionary, i, nearerBound(dictionary, i));
      if (loss === Number.POSITIVE_INFINITY) return "infeasible";
      if (dictionary.objective - loss <= cutOff) {
        value[rows] = dictionary.objective - loss;
        return "below cut-off";
      }
      if (loss <= most) continue;
      most = loss;
      row = i;
      if (idle > idleAllowed) break;
    }
    if (row < 0) return "optimal";
    idle = most > leastStep ? 0 : idle + 1;
    if (!repair(dictionary, row, nearerBound(dictionary, row))) return "infeasible";
  }
  return "out of pivots";
}

/** The bound that the basic variable of a row has passed. */
function nearerBound({ basic, value, low, high }: Dictionary, row: number): number {
  return value[row]! < low[basic[row]!]! ? low[basic[row]!]! : high[basic[row]!]!;
}

/**
 * How far the objective falls, at least, where the basic variable of a row is brought to `target`: by the columns that
 * cost least for what they move it, each as far as it has room. Infinity where they cannot bring it there.
 *
 * Source: the penalties of N. J. Driebeek, Management Science 12 (1966) 576–587, with bounded columns.
 */
export function lossOf(dictionary: Dictionary, row: number, target: number): number {
  const { rows, columns, T } = dictionary;
  const start = row * columns;
  const costs = rows * columns;
  let lacking = target - dictionary.value[row]!;
  const sense = lacking > 0 ? 1 : -1;
  lacking *= sense;
  let loss = 0;
  let floor = -1;
  for (;;) {
    // The next cheapest price above `floor`, and how far the columns of that price move the row together.
    let price = Number.POSITIVE_INFINITY;
    let reach = 0;
    for (let c = 0; c < columns; c++) {
      const rate = T[start + c]! * sense;
      const size = Math.abs(rate);
      if (size <= pivot) continue;
      const own = Math.abs(T[costs + c]!) / size;
      if (own > price || own <= floor) continue;
      const room = roomOf(dictionary, c, rate);
      if (room <= leastStep) continue;
      if (own < price) reach = 0;
      price = own;
      reach += size * room;
    }
    if (price === Number.POSITIVE_INFINITY) return price;
    if (reach >= lacking) return loss + price * lacking;
    loss += price * reach;
    lacking -= reach;
    floor = price;
  }
}

/** Brings one basic variable to `target` by the cheapest column, flipping boxed ones whose whole range is too short. */
function repair(dictionary: Dictionary, row: number, target: number): boolean {
  const { rows, columns, T, value } = dictionary;
  const start = row * columns;
  const costs = rows * columns;
  for (;;) {
    const lacking = target - value[row]!;
    const sense = lacking > 0 ? 1 : -1;
    let cheapest = Number.POSITIVE_INFINITY;
    let column = -1;
    for (let c = 0; c < columns; c++) {
      const rate = T[start + c]! * sense;
      const size = Math.abs(rate);
      if (size <= pivot) continue;
      const price = Math.abs(T[costs + c]!) / size;
      if (price > cheapest + leastStep) continue;
      if (price > cheapest - leastStep && size <= Math.abs(T[start + column]!)) continue;
      if (roomOf(dictionary, c, rate) <= leastStep) continue;
      cheapest = price;
      column = c;
    }
    if (column < 0) return false;
    const step = lacking / T[start + column]!;
    const room = roomOf(dictionary, column, step);
    if (room < Math.abs(step)) {
      dictionary.move(column, step > 0 ? room : -room);
      continue;
    }
    dictionary.move(column, step);
    value[row] = target;
    dictionary.exchange(row, column);
    return true;
  }
}
