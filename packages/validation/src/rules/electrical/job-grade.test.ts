import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { jobGrade } from "./job-grade.ts";

testRule(
  jobGrade,
  {
    fires: [
      {
        name: "an example without a record",
        file: "datasets/examples/small-supply/nominal/job.json",
        text: '{\n  "format": 1,\n  "title": "Test set",\n  "chassis": { "era": 1950, "line": { "designVolts": "117 V", "hertz": 60 } },\n  "stages": [{ "id": "supply", "template": "small-supply", "bind": { "hv": "T1 red", "b-plus": "B+" } }]\n}\n',
        says: "expected.json",
        whole: true,
        options: { electrical: true },
      },
    ],
    passes: [
      {
        name: "a demo job of which nothing is stored",
        file: "datasets/jobs/test-set/job.json",
        text: '{\n  "format": 1,\n  "title": "Test set",\n  "chassis": { "era": 1950, "line": { "designVolts": "117 V", "hertz": 60 } },\n  "stages": [{ "id": "supply", "template": "small-supply", "bind": { "hv": "T1 red", "b-plus": "B+" } }]\n}\n',
        options: { electrical: true },
      },
    ],
  },
  grader,
);
