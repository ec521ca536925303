/** Edits of what there is to stand on: the plan's stand types and its stands. */

import type { PlanDocument, StandDocument, StandId, StandTypeDocument, StandTypeId } from "../../plan";
import { type Changes, changed, kept, mapped, withItem } from "../change";
import { edit } from "./command";

function withoutStands(document: PlanDocument, gone: (stand: StandId) => boolean): PlanDocument {
  return changed(document, {
    stands: kept(document.stands, ({ id }) => !gone(id)),
    layouts: mapped(document.layouts, (layout) =>
      changed(layout, { placements: kept(layout.placements, ({ stand }) => !gone(stand)) }),
    ),
    steps: mapped(document.steps, (step) =>
      step.readings === undefined
        ? step
        : changed(step, { readings: kept(step.readings, ({ stand }) => stand === null || !gone(stand)) }),
    ),
  });
}

export const registerEdits = {
  "register.add": edit<{ stands: readonly StandDocument[] }>({
    label: ({ stands }) => (stands.length === 1 ? `Add stand ${stands[0]?.id}` : `Add ${stands.length} stands`),
    run: (document, { stands }) => changed(document, { stands: [...document.stands, ...stands] }),
  }),
  "register.change": edit<{ stand: StandId; change: Changes<Omit<StandDocument, "id">> }>({
    label: ({ stand }) => `Change stand ${stand}`,
    run: (document, { stand, change }) =>
      changed(document, { stands: withItem(document.stands, stand, (item) => changed(item, change)) }),
  }),
  /** Removes a stand from the plan, from every layout and with the readings taken on it. */
  "register.remove": edit<{ stand: StandId }>({
    label: ({ stand }) => `Remove stand ${stand} from the plan`,
    run: (document, args) => withoutStands(document, (stand) => stand === args.stand),
  }),

  "type.add": edit<{ type: StandTypeDocument }>({
    label: ({ type }) => `Add stand type ${type.name}`,
    run: (document, { type }) => changed(document, { standTypes: [...document.standTypes, type] }),
  }),
  "type.change": edit<{ type: StandTypeId; change: Changes<Omit<StandTypeDocument, "id">> }>({
    label: ({ type }, document) =>
      `Change stand type ${document.standTypes.find(({ id }) => id === type)?.name ?? type}`,
    run: (document, { type, change }) =>
      changed(document, { standTypes: withItem(document.standTypes, type, (item) => changed(item, change)) }),
  }),
  /** Removes a type with all its stands. */
  "type.remove": edit<{ type: StandTypeId }>({
    label: ({ type }, document) =>
      `Remove stand type ${document.standTypes.find(({ id }) => id === type)?.name ?? type}`,
    run: (document, { type }) => {
      const gone = new Set(document.stands.filter((stand) => stand.type === type).map(({ id }) => id));
      return changed(
        withoutStands(document, (stand) => gone.has(stand)),
        { standTypes: kept(document.standTypes, ({ id }) => id !== type) },
      );
    },
  }),
};
