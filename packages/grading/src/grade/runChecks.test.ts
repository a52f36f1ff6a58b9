import { describe, expect, it } from "vitest";
import type { Check, Finding, Life, Severity } from "../model/index.ts";
import { modelOf } from "../testing/model.ts";
import { runChecks, sortFindings, withoutEchoes } from "./runChecks.ts";

const finding = (title: string, severity: Severity, holds?: Finding["holds"], life: Life = "restored"): Finding => ({
  check: "x",
  severity,
  life,
  title,
  found: "",
  shouldBe: "",
  figures: [],
  why: "",
  action: "",
  cautions: [],
  sources: [],
  ...(holds === undefined ? {} : { holds }),
});
const check = (id: string, run: Check["run"]): Check => ({
  id,
  area: "record",
  title: id,
  question: "",
  needs: "",
  sources: [],
  cautions: [],
  run,
});

describe("running checks", () => {
  it("goes on after one that throws, and says what it threw", () => {
    const runs = runChecks(modelOf({}), [
      check("first", () => [finding("a", "good")]),
      check("breaks", () => {
        throw new Error("no such table");
      }),
      check("last", () => [finding("b", "watch")]),
    ]);
    expect(runs.map(({ check: { id }, findings, failure }) => [id, findings.length, failure])).toEqual([
      ["first", 1, undefined],
      ["breaks", 0, "no such table"],
      ["last", 1, undefined],
    ]);
  });
});

describe("order of findings", () => {
  it("is worst first, then the earliest step held, then as they came; plans after what stands on the bench", () => {
    const sorted = sortFindings([
      finding("good", "good"),
      finding("replace, service", "replace", "service"),
      finding("danger, planned", "danger", undefined, "planned"),
      finding("replace, full line", "replace", "full-line"),
      finding("replace, holds nothing", "replace"),
      finding("danger", "danger", "full-line"),
      finding("unmeasured", "unmeasured"),
      finding("watch 1", "watch"),
      finding("watch 2", "watch"),
      finding("adjust", "adjust"),
    ]);
    expect(sorted.map(({ title }) => title)).toEqual([
      "danger",
      "danger, planned",
      "replace, full line",
      "replace, service",
      "replace, holds nothing",
      "adjust",
      "watch 1",
      "watch 2",
      "unmeasured",
      "good",
    ]);
  });
});

describe("withoutEchoes", () => {
  const said = (life: Finding["life"], severity: Finding["severity"], found = "450 V"): Finding => ({
    check: "x",
    severity,
    life,
    part: "C1",
    title: "C1",
    found,
    shouldBe: "",
    figures: [],
    why: "",
    action: "",
    cautions: [],
    sources: [],
  });

  it("keeps of a plan only what it changes for the worse", () => {
    const standing = said("restored", "danger");
    const worse = said("planned", "danger", "512 V");
    expect(withoutEchoes([standing, said("planned", "danger"), worse, said("planned", "good")])).toEqual([standing, worse]);
  });
});
