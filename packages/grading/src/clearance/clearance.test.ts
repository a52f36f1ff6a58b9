import { describe, expect, it } from "vitest";
import type { Finding, Severity } from "../model/index.ts";
import { clearanceOf } from "./clearance.ts";
import { MEANINGS } from "./meanings.ts";

const finding = (severity: Severity, rest: Partial<Finding> = {}): Finding => ({
  check: "x",
  severity,
  life: "restored",
  title: `${severity} ${rest.holds ?? ""}`.trim(),
  found: "",
  shouldBe: "",
  figures: [],
  why: "",
  action: "",
  cautions: [],
  sources: [],
  ...rest,
});

describe("clearance", () => {
  it("is service where nothing holds", () => {
    expect(clearanceOf([finding("watch"), finding("good"), finding("unmeasured"), finding("adjust")])).toEqual({
      level: "service",
      holds: [],
    });
  });

  it("is not handed back with a part to replace, nor with a check that broke down", () => {
    expect(clearanceOf([finding("replace")])).toMatchObject({ level: "full-line", holds: [{ step: "service", finding: 0 }] });
    expect(clearanceOf([finding("good")], [{ step: "service", reason: "Ripple: the check could not be run" }])).toMatchObject({
      level: "full-line",
      holds: [{ step: "service", reason: "Ripple: the check could not be run", finding: -1 }],
    });
  });

  it("is none where nothing was looked at", () => {
    expect(clearanceOf([])).toEqual({ level: "none", next: "current-limited", holds: [] });
  });

  it.each([
    ["current-limited", "none"],
    ["full-line", "current-limited"],
    ["service", "full-line"],
  ] as const)("stops below the step that a finding holds: %s", (holds, level) => {
    expect(clearanceOf([finding("replace", { holds })])).toMatchObject({ level, next: holds });
  });

  it("is decided by the lowest step held, and lists all holds from there up", () => {
    const { level, next, holds } = clearanceOf([
      finding("replace", { holds: "service" }),
      finding("replace", { holds: "full-line" }),
      finding("adjust", { holds: "full-line" }),
    ]);
    expect([level, next]).toEqual(["current-limited", "full-line"]);
    expect(holds.map(({ step, finding: index }) => [step, index])).toEqual([
      ["full-line", 1],
      ["full-line", 2],
      ["service", 0],
    ]);
  });

  it("is none for a danger that names no step", () => {
    expect(clearanceOf([finding("danger")])).toMatchObject({ level: "none", next: "current-limited" });
  });

  it("takes a danger's own step where it names one", () => {
    expect(clearanceOf([finding("danger", { holds: "full-line" })]).level).toBe("current-limited");
  });

  it("does not count what is only planned, nor what is good", () => {
    expect(clearanceOf([finding("danger", { life: "planned" }), finding("good", { holds: "current-limited" })]).level).toBe("service");
  });

  it("has a word on every step that promises nothing", () => {
    for (const text of Object.values(MEANINGS)) expect(text).not.toMatch(/\bsafe/i);
  });
});
