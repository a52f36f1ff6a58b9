import { describe, expect, it } from "vitest";
import { type BodyEndDot, decodeBodyEndDot } from "./decodeBodyEndDot.ts";

// RMA body-end-dot, S6; each worked by hand.
const good: readonly (readonly [BodyEndDot, number, number])[] = [
  [{ body: "red", end: "green", dot: "orange" }, 25e3, 0.2],
  [{ body: "green", end: "black", dot: "yellow", otherEnd: "silver" }, 500e3, 0.1],
  [{ body: "yellow", end: "violet", dot: "brown", otherEnd: "gold" }, 470, 0.05],
  [{ body: "yellow", end: "gold", dot: "brown", otherEnd: "violet" }, 470, 0.05],
  [{ body: "red", end: "black" }, 2000, 0.2], // no dot: red, two noughts
  [{ body: "green" }, 5.5e6, 0.2],
  [{ body: "orange", end: "black", dot: "black" }, 30, 0.2],
];

describe("decodeBodyEndDot", () => {
  it.each(good)("reads %o", (marks, ohms, tolerance) => {
    const result = decodeBodyEndDot(marks);
    expect(result).toMatchObject({ ok: true, value: { value: ohms, tolerance: { minus: tolerance, plus: tolerance } } });
  });

  it.each([
    [{ body: "gold", end: "red", dot: "red" }],
    [{ body: "black", end: "red", dot: "red" }],
    [{ body: "red", end: "silver", dot: "red" }],
    [{ body: "red", end: "red", dot: "none" }],
    [{ body: "red", end: "red", dot: "red", otherEnd: "blue" }],
    [{ body: "tartan" }],
  ] as const)("refuses %o", (marks) => {
    expect(decodeBodyEndDot(marks).ok).toBe(false);
  });
});
