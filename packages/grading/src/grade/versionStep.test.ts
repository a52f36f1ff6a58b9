import { describe, expect, it } from "vitest";
import { compareVersions, versionStep } from "./versionStep.ts";

describe("versionStep", () => {
  // Semantic Versioning 2.0.0: major, minor, patch; below 1.0.0 anything may change with the second number (clause 4).
  it.each([
    ["1.2.3", "1.2.3", undefined],
    ["1.2.3", "1.2.10", "patch"],
    ["1.2.3", "1.10.0", "minor"],
    ["1.9.9", "2.0.0", "major"],
    ["2.0.0", "1.9.9", "major"],
    ["0.1.0", "0.2.0", "major"],
    ["0.1.0", "0.1.1", "patch"],
    ["0.9.0", "1.0.0", "major"],
  ])("from %s to %s is %s", (was, is, step) => expect(versionStep(was, is)).toBe(step));
  it("orders by numbers, not by letters", () => {
    expect(compareVersions("1.10.0", "1.9.0")).toBeGreaterThan(0);
    expect(compareVersions("1.2.3", "1.2.3")).toBe(0);
    expect(compareVersions("0.9.9", "1.0.0")).toBeLessThan(0);
  });
});
