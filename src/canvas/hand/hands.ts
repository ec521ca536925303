/** The whole hand on each drawing: what the drawings offer besides what is gripped lies over it. */

import { spotsInElevation, spotsInPlan } from "../growing/JointSpots";
import { touchingJoints } from "../growing/touchJoints";
import { elevationHost, type HandOptions, planHost } from "./hosts";
import { pointingAtPlaces } from "./pointAtPlaces";
import type { PointerHost } from "./pointers";

export const planHand = (options: HandOptions): PointerHost =>
  touchingJoints(pointingAtPlaces(planHost(options), options), options, (state) =>
    spotsInPlan(state, options.drawn().plan),
  );

export const elevationHand = (options: HandOptions): PointerHost =>
  touchingJoints(elevationHost(options), options, (state) => spotsInElevation(state, options.drawn().elevation));
