import { expect, it } from "vitest";
import { termsOf } from "./termsOf.ts";

it.each([
  ["B+", "HT"],
  ["B plus", "high tension"],
  ["hum", "ripple"],
  ["cap", "condenser"],
  [".05 mfd", ".05 uF"],
  ["mmf", "pF"],
  ["tubes", "valve"],
  ["mains cord", "line cord"],
  ["tuning indicator", "magic eye"],
  ["anode", "plate"],
  ["earthed", "ground"],
  ["motorboating", "putt-putt"],
  ["AGC", "automatic volume control"],
  ["leaky", "leakage"],
  ["drifting", "drifted"],
  ["humming", "hums"],
  ["capacitors", "capacitor"],
])("%s and %s are one (common-practice)", (one, other) => {
  expect(termsOf(one)).toEqual(termsOf(other));
});

it.each([
  ["B+", "B-"],
  ["uF", "pF"],
  ["plate", "screen"],
  ["6V6", "6L6"],
  ["high", "low"],
])("%s and %s are two", (one, other) => {
  expect(termsOf(one)).not.toEqual(termsOf(other));
});

it("leaves stop words out and keeps the order", () => {
  expect(termsOf("the hum of a choke")).toEqual(["hum", "choke"]);
});
