import { expect, it } from "vitest";
import { fixtureReport } from "../testing/fixtureReport.ts";
import { becauseText } from "./becauseText.ts";
import { withShortPlaces } from "./shortPlaces.ts";

const location = (file: string) => ({ file, line: 3, column: 1 });
const reportOf = (job: string, file: string) =>
  withShortPlaces({
    ...fixtureReport,
    job: { ...fixtureReport.job, file: job },
    findings: [{ ...fixtureReport.findings[0]!, location: location(file) }],
    readings: [{ ...fixtureReport.readings[0]!, location: location(file) }],
    warnings: [{ message: "m", file }],
  });

it.each([
  ["jobs/set/job.json", "jobs/set/parts.csv", "parts.csv"],
  ["jobs\\set\\job.json", "jobs\\set\\parts.csv", "parts.csv"],
  ["jobs/set/job.json", "jobs/settee/parts.csv", "jobs/settee/parts.csv"],
  ["job.json", "other/parts.csv", "other/parts.csv"],
])("beside %s the file %s is named %s", (job, file, shown) => {
  const { findings, readings, warnings } = reportOf(job, file);
  expect([findings[0]?.location?.file, readings[0]?.location?.file, warnings[0]?.file]).toStrictEqual([shown, shown, shown]);
  expect(findings[0]?.location).toMatchObject({ line: 3, column: 1 });
});

it("names at most eight causes of a caution and counts the others", () => {
  expect(becauseText([])).toBe("");
  expect(becauseText(["C1", "C2"])).toBe("C1, C2");
  expect(becauseText(Array.from({ length: 20 }, (_, index) => `C${index + 1}`))).toBe("C1, C2, C3, C4, C5, C6, C7, C8 and 12 more");
});
