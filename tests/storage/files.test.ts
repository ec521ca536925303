import { expect, test } from "vitest";
import { fileNameFor, largestFile, readFile } from "../../src/storage";

test("a file is named by its title, without what file systems do not take", () => {
  expect(fileNameFor("Runway girder G2, weld-out")).toBe("Runway-girder-G2-weld-out.json");
  expect(fileNameFor("a/b\\c:d*?")).toBe("a-b-c-d.json");
  expect(fileNameFor("Träger № 4")).toBe("Träger-No-4.json");
  expect(fileNameFor("???")).toBe("plan.json");
  expect(fileNameFor("x".repeat(500))).toHaveLength("x".repeat(60).length + 5);
});

test("a file larger than a plan may be is cut off behind the limit, so that it is refused and not read whole", async () => {
  const small = await readFile(new File(["{}"], "small.json"));
  expect([small.name, small.bytes.length, small.handle]).toEqual(["small.json", 2, null]);
  const large = await readFile(new File([new Uint8Array(largestFile + 5000)], "large.json"));
  expect(large.bytes.length).toBe(largestFile + 1);
});
