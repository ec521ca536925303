import { expect, it } from "vitest";
import { findingsOf, forFindings } from "../../src/checks";
import { demoBeam } from "../../src/library";
import { complete } from "../../src/plan";
import { createSearch } from "../../src/worker/search";

const over = findingsOf(complete(demoBeam), forFindings).find(
  ({ code, verdict }) => code === "stand-over-rating" && verdict === "fails",
)!;
const breathe = () => new Promise<void>((resolve) => setTimeout(resolve));

it("finds the shim that has to come out", async () => {
  const mend = await createSearch(breathe).findMend(demoBeam, over);
  expect(mend).toMatchObject({ kind: "shim", stand: over.stand, shim: 0 });
});

it("gives up when it is stopped, and when another search begins", async () => {
  // A rating that no single change can bring about: the search would try all that it knows.
  const hopeless = {
    ...demoBeam,
    standTypes: demoBeam.standTypes.map((type) => ({ ...type, ratedLoad: 1000, ratedLoadCentre: 1000 })),
  };
  const search = createSearch(breathe);
  const stopped = search.findMend(hopeless, over);
  search.stop();
  expect(await stopped).toBeNull();
  const first = search.findMend(hopeless, over);
  const second = search.findMend(demoBeam, over);
  expect(await first).toBeNull();
  expect(await second).not.toBeNull();
});
