import { expect, it } from "vitest";
import type { Finding, OrderItem } from "../model/index.ts";
import { orderLines } from "./orderLines.ts";

const asking = (...order: OrderItem[]): Finding =>
  ({
    check: "x",
    severity: "replace",
    life: "restored",
    title: "",
    found: "",
    shouldBe: "",
    figures: [],
    why: "",
    action: "",
    cautions: [],
    sources: [],
    order,
  }) as Finding;
const item = (what: string, part: string, why = "dry", quantity = 1): OrderItem => ({ what, quantity, for: part, why });

it("adds like things up, with what they are for and why", () => {
  expect(
    orderLines([
      asking(item("capacitor 22 uF 450 V", "C1"), item("fuse 1 A", "F1", "none there")),
      asking(item("capacitor 22 uF 450 V", "C2", "leaky", 2)),
    ]),
  ).toEqual([
    { what: "capacitor 22 uF 450 V", quantity: 3, for: ["C1", "C2"], why: ["dry", "leaky"] },
    { what: "fuse 1 A", quantity: 1, for: ["F1"], why: ["none there"] },
  ]);
});

it("counts once what two findings ask for the same part, and keeps both reasons", () => {
  const [line] = orderLines([asking(item("capacitor 22 uF 450 V", "C1", "dry")), asking(item("capacitor 22 uF 450 V", "C1", "leaky"))]);
  expect(line).toEqual({ what: "capacitor 22 uF 450 V", quantity: 1, for: ["C1"], why: ["dry", "leaky"] });
});

it("is empty where nothing is asked for", () => {
  expect(orderLines([asking()])).toEqual([]);
});
