import type { StageTemplate } from "@underchassis/dataset";
import { nearestOf, oneOf } from "@underchassis/source-text";
import type { Complaint, RecordRule } from "../../model/rule.ts";
import { gather, nothing } from "../../shared/gather.ts";

/** An expected figure says where it is read. */
export const expectedPlace: RecordRule = {
  code: "UC-419",
  name: "expected-place",
  scope: "record",
  severity: "error",
  title: "An expected voltage or resistance names its point, an expected current its part",
  why: "A figure without a place cannot be read with a meter.",
  bad: '"quantity": "dc-amps", "at": "b-plus"',
  good: '"quantity": "dc-amps", "part": "filterResistor"',
  kinds: ["stage"],
  check(record) {
    const { parts, expected } = record.value as StageTemplate;
    const roles = parts.map(({ role }) => role);
    return gather(expected, ({ at, part, quantity }, index): readonly Complaint[] => {
      const current = quantity.endsWith("-amps");
      if (current ? part === undefined : at === undefined)
        return [
          {
            at: { path: ["expected", index, "quantity"] },
            message: `${quantity} without ${current ? "the part it flows through" : "the point it is read at"}`,
            received: quantity,
            expected: current ? '"part": the role of a part' : '"at": a terminal or inner point',
          },
        ];
      if (part === undefined || roles.includes(part)) return nothing();
      return [
        {
          at: { path: ["expected", index, "part"] },
          message: `the template has no role "${part}"`,
          received: part,
          expected: oneOf(roles, 30),
          nearest: nearestOf(part, roles),
        },
      ];
    });
  },
};
