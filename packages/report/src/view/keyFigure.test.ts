import type { ReportFigure, ReportFinding } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { fixtureFindings } from "../testing/fixtureFindings.ts";
import { keyFigure, shortFigure, tellingFigures } from "./keyFigure.ts";

const plain = (text: string): string => text.replaceAll("\u00a0", " ");
const figure = (label: string, value: number, more: Partial<ReportFigure> = {}): ReportFigure => ({
  label,
  value,
  unit: "V",
  how: "measured",
  source: "job",
  ...more,
});
const finding = (title: string, figures: ReportFigure[]): ReportFinding => ({ ...fixtureFindings[0]!, title, figures });
const over = figure("voltage on C1", 522, { limit: 450, limitKind: "maximum", margin: 1 - 522 / 450 });
const further = figure("ripple", 30, { limit: 10, limitKind: "maximum", margin: -2 });
const inHand = figure("reverse voltage", 0.5, { limit: 1, limitKind: "maximum", margin: 0.5 });

describe("keyFigure", () => {
  it("takes the figure furthest beyond its limit", () => {
    expect(tellingFigures(finding("x", [over, inHand, further])).map(({ label }) => label)).toStrictEqual(["ripple", "voltage on C1"]);
    expect(plain(keyFigure(finding("x", [over, inHand, further])))).toBe("ripple 30 V, at most 10 V, over by 200 %");
  });

  it("takes the closest to its limit when none is broken, and says nothing without limits", () => {
    expect(plain(keyFigure(finding("x", [figure("drop", 3), inHand])))).toBe("reverse voltage 500 mV, at most 1 V, 50 % in hand");
    expect(keyFigure(finding("x", [figure("drop", 3)]))).toBe("");
  });

  it("does not repeat a value that the title gives, but never mistakes a part of a number for it", () => {
    expect(plain(keyFigure(finding("C1 stands 522 V", [over])))).toBe("at most 450 V, over by 16 %");
    expect(plain(keyFigure(finding("C1 stands 1522 V", [over])))).toBe("voltage on C1 522 V, at most 450 V, over by 16 %");
  });

  it("leaves out labels that are the names of a rule's quantities", () => {
    expect(plain(shortFigure({ ...over, label: "lineFuse.ratedVolts" }))).toBe("522 V, at most 450 V, over by 16 %");
    expect(plain(shortFigure({ ...over, label: 'abs(volts("output"))' }))).toBe("522 V, at most 450 V, over by 16 %");
  });

  it("says so where the figure rests on memory", () => {
    const isFromMemory = (id: string) => id === "job";
    expect(plain(keyFigure(finding("x", [over]), isFromMemory))).toBe("voltage on C1 522 V, at most 450 V, over by 16 %, from memory");
    expect(plain(keyFigure(finding("x", [over]), () => false))).not.toContain("from memory");
  });
});
