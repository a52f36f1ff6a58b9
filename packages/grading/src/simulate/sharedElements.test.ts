import type { Network } from "@underchassis/calc";
import { expect, it } from "vitest";
import { SharedElements } from "./sharedElements.ts";

const network = (ohms: number, leakOhms: number): Network => ({
  reference: "0",
  elements: [
    { kind: "resistor", id: "R1", nodes: ["a", "0"], ohms },
    { kind: "capacitor", id: "C1", nodes: ["a", "0"], farads: 1e-6, leakOhms },
  ],
});

it("gives equal elements one object and leaves others alone", () => {
  const shared = new SharedElements();
  const [first, twin, other] = [network(100, 1e6), network(100, 1e6), network(220, 1e6)].map((each) => shared.share(each));
  expect(twin!.elements[0]).toBe(first!.elements[0]);
  expect(other!.elements[0]).not.toBe(first!.elements[0]);
  expect(other!.elements[1]).toBe(first!.elements[1]);
  expect(shared.fingerprint(twin!)).toBe(shared.fingerprint(first!));
  expect(shared.fingerprint(other!)).not.toBe(shared.fingerprint(first!));
});

it("tells an infinite value from none, and one order of elements from another", () => {
  const shared = new SharedElements();
  const endless = shared.share(network(100, Number.POSITIVE_INFINITY));
  const odd = shared.share(network(100, Number.NaN));
  const turned = shared.share({ reference: "0", elements: network(100, Number.NaN).elements.toReversed() });
  expect(shared.fingerprint(endless)).not.toBe(shared.fingerprint(odd));
  expect(shared.fingerprint(turned)).not.toBe(shared.fingerprint(odd));
});
