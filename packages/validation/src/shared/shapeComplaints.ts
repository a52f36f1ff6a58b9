import type { Complaint } from "../model/rule.ts";
import type { RecordFile } from "../model/subjects.ts";

/** The violations of a record's schema whose code is taken, each at its key or value. */
export function shapeComplaints({ violations }: RecordFile, takes: (code: string) => boolean): Complaint[] {
  return violations.flatMap(({ at: path, part, problem }) => {
    const { code, message, expected, received, help } = problem;
    if (!takes(code)) return [];
    const nearest = typeof problem.nearest === "function" ? problem.nearest() : problem.nearest;
    return [
      {
        at: { path, part },
        message,
        ...(expected === undefined ? {} : { expected }),
        ...(received === undefined ? {} : { received }),
        ...(help === undefined ? {} : { help }),
        ...(nearest === undefined ? {} : { nearest }),
      },
    ];
  });
}
