import { expect, it } from "vitest";
import { countFigures, countRow } from "./countFigures.ts";

const kinds = new Map([
  ["book", "published"],
  ["from-memory", "from-memory"],
  ["common-practice", "common-practice"],
  ["computed", "derived"],
]);
const none = { "from-memory": 0, "common-practice": 0, derived: 0, published: 0 };

it("counts numbers, and texts that hold a quantity, under the source beside them", () => {
  expect(countFigures({ volts: 6.3, text: "47 kohm 1 W", word: "pentode", source: "book" }, kinds)).toEqual({ ...none, published: 2 });
});

it("takes the nearest source above, and an own one before it", () => {
  const record = { sources: ["book"], a: { volts: 1 }, list: [{ volts: 2, source: "from-memory" }, { volts: 3 }] };
  expect(countFigures(record, kinds)).toEqual({ ...none, published: 2, "from-memory": 1 });
});

it("counts under the weakest of several sources", () => {
  expect(countFigures({ sources: ["book", "computed", "from-memory"], volts: 1 }, kinds)).toEqual({ ...none, "from-memory": 1 });
  expect(countFigures({ sources: ["book", "computed"], volts: 1 }, kinds)).toEqual({ ...none, derived: 1 });
});

it("leaves out what is no figure, and what has no source", () => {
  expect(countFigures({ schemaVersion: 1, rank: 3, era: { from: 1930 }, fault: { weight: 40 }, sources: ["book"] }, kinds)).toEqual(none);
  expect(countFigures({ volts: 3 }, kinds)).toEqual(none);
  expect(countFigures({ volts: 3, source: "unheard-of" }, kinds)).toEqual(none);
});

it("takes a worked example's figures as its status says", () => {
  const example = (status: string) => ({
    inputs: { volts: "45 V" },
    tolerance: { absolute: 0.5 },
    source: { work: "x", place: "p. 3 V", status },
  });
  expect(countFigures(example("checked"), kinds)).toEqual({ ...none, published: 1 });
  expect(countFigures(example("memory"), kinds)).toEqual({ ...none, "from-memory": 1 });
});

it("counts a row's cells that are numbers", () => {
  expect(countRow({ speed: "T", amps: "0.5", note: "", source: "common-practice" }, kinds)).toEqual({ ...none, "common-practice": 1 });
});
