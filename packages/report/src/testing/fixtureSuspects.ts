import type { Report } from "@underchassis/dataset";

type SuspectReport = NonNullable<Report["suspects"]>;

const reading: SuspectReport["suspects"][number]["readings"][number] = {
  at: "B+ raw",
  to: "chassis",
  quantity: "dc-volts",
  condition: "operating",
  read: 231,
  predicted: 232.4,
  healthy: 318,
  deviation: -0.3,
};

/** A search that found two suspects, one of them with a danger and a group, and asks for a measurement. */
export const fixtureSuspects: SuspectReport = {
  verdict: "suspects",
  healthy: 0.002,
  noneOfThese: 0.01,
  suspects: [
    {
      rank: 1,
      posterior: 0.72,
      prior: 0.004,
      title: "C1 leaks, about 14 kohm",
      fault: { kind: "leaky", part: "C1", element: "C1", parameter: "leakOhms", value: 14e3 },
      low: 11e3,
      high: 17e3,
      readings: [
        reading,
        { ...reading, quantity: "ohms", condition: "cold", read: null, predicted: 14e3, healthy: null, deviation: 9, slip: true },
      ],
      group: [
        {
          title: "R1 has fallen to about 11 kohm from 47 kohm",
          fault: { kind: "drift-low", part: "R1", element: "R1", parameter: "ohms", value: 11e3, nominal: 47e3 },
          posterior: 0.2,
        },
      ],
      confirm: "Lift one lead and measure its leakage at its working voltage.",
      cautions: ["high-voltage-stored-charge"],
    },
    {
      rank: 2,
      posterior: 0.1,
      prior: 0.0004,
      title: "R9: the first lead that belongs on B+ lies on V5 grid",
      fault: { kind: "moved-lead", part: "R9", element: "R9", lead: "0", from: "B+", to: "V5 grid" },
      readings: [{ ...reading, deviation: 2.6 }],
      group: [],
      confirm: "Look: follow that lead to its lug.",
      cautions: ["high-voltage-stored-charge"],
      hazard: { at: "V5 grid to chassis", volts: 140, healthy: 0 },
    },
  ],
  unexplained: [],
  next: {
    at: "B+",
    to: "chassis",
    quantity: "ohms",
    condition: "cold",
    bits: 1.4,
    predictions: [
      { title: "C1 leaks, about 14 kohm", value: null, spread: 0 },
      { title: "R9: the first lead that belongs on B+ lies on V5 grid", value: 52e3, spread: 4e3 },
    ],
    cautions: ["high-voltage-stored-charge"],
    why: "it is made with the plug out and the filters discharged, and tells the leading suspects apart",
  },
  coldOnly: { title: "R9: the first lead that belongs on B+ lies on V5 grid", at: "V5 grid to chassis", volts: 140 },
  life: "found",
  hypotheses: 617,
  spared: 40,
  simulations: 230,
  complete: true,
  seconds: 0.7,
};
