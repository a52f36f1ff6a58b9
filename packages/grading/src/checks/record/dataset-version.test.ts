import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { smallDataset } from "../../testing/smallDataset.ts";
import { datasetVersion } from "./dataset-version.ts";

const run = (writtenFor: string | undefined, version: string) =>
  datasetVersion.run(
    modelOf(
      {
        ...(writtenFor === undefined ? {} : { datasetVersion: writtenFor }),
        parts: [
          { name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "9 V" },
          { name: "R1", kind: "resistor", between: ["B+", "chassis"], marked: "1k" },
        ],
      },
      { ...smallDataset(), version },
    ),
  );

describe("dataset-version", () => {
  it("finds a job of an earlier reference", () => {
    const [finding] = run("1.2.0", "2.0.0");
    expect(finding).toMatchObject({ severity: "watch", found: "written for 1.2.0, graded with 2.0.0" });
    expect(finding?.why).toContain("changed their names");
  });
  it("tells corrected values from changed meanings (semantic versions)", () => {
    expect(run("1.2.0", "1.3.0")[0]?.why).toMatch(/^A minor step: .*added/);
    expect(run("1.2.0", "1.2.1")[0]?.why).toMatch(/^A patch step: .*corrected/);
    expect(run("1.9.0", "2.0.0")[0]?.why).toMatch(/^A major step: .*stricter/);
    expect(run("0.1.0", "0.1.1")[0]?.why).toMatch(/^A patch step/);
    expect(run("0.1.0", "0.2.0")[0]?.why).toContain("changed their names");
  });
  it("finds one of a newer reference", () => expect(run("1.10.0", "1.9.0")[0]?.title).toContain("newer"));
  it("passes the same version", () => expect(run("1.2.0", "1.2.0")[0]).toMatchObject({ severity: "good" }));
  it("does not apply to a job that names none", () => expect(run(undefined, "1.0.0")).toEqual([]));
});
