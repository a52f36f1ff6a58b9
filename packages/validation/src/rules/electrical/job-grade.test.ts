import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { jobGrade } from "./job-grade.ts";

const JOB =
  '{\n  "format": 1,\n  "title": "Test set",\n  "chassis": { "era": 1950, "line": { "designVolts": "117 V", "hertz": 60 } },\n  "stages": [{ "id": "supply", "template": "small-supply", "bind": { "hv": "T1 red", "b-plus": "B+" } }]\n}\n';
const EXAMPLE = "datasets/examples/small-supply";
/** The record of the example, as written. */
const recorded = (text: string) => ({
  file: `${EXAMPLE}/expected.json`,
  text: `{\n  "fault": {},\n  "nominal": ${text}\n}\n`,
  others: { [`${EXAMPLE}/nominal/job.json`]: JOB },
  options: { electrical: true },
});

testRule(
  jobGrade,
  {
    fires: [
      { name: "another clearance, at its place in the record", ...recorded('{ "clearance": «"service"» }'), says: "nominal/job.json" },
      { name: "another gravest finding", ...recorded('{ "worst": «"good"» }') },
      {
        name: "a finding that is not made",
        ...recorded('{ "finds": [«{ "check": "electrolytic-condition", "part": "supply.reservoir", "severity": "adjust" }»] }'),
        says: "does not come to the finding",
      },
      {
        name: "an example without a record",
        file: "datasets/examples/small-supply/nominal/job.json",
        text: JOB,
        says: "expected.json",
        whole: true,
        options: { electrical: true },
      },
    ],
    passes: [
      {
        name: "a demo job of which nothing is stored",
        file: "datasets/jobs/test-set/job.json",
        text: JOB,
        options: { electrical: true },
      },
    ],
  },
  grader,
);
