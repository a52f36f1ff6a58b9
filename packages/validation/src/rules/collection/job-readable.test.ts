import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { AT, SOUND_FILES } from "../../testing/soundFiles.ts";
import { jobReadable } from "./job-readable.ts";

testRule(
  jobReadable,
  {
    fires: [
      {
        name: "a misspelt template",
        file: "datasets/jobs/test-set/job.json",
        text: '{\n  "format": 1,\n  "title": "Test set",\n  "chassis": { "era": 1950, "line": { "designVolts": "117 V", "hertz": 60 } },\n  "stages": [{ "id": "supply", "template": «"smal-supply"», "bind": { "hv": "T1 red", "b-plus": "B+" } }]\n}\n',
        nearest: "small-supply",
      },
      {
        name: "a value that cannot be read",
        file: "datasets/jobs/test-set/job.json",
        text: '{\n  "format": 1,\n  "title": "Test set",\n  "chassis": { "era": 1950, "line": { "designVolts": «"117 A"», "hertz": 60 } },\n  "stages": [{ "id": "supply", "template": "small-supply", "bind": { "hv": "T1 red", "b-plus": "B+" } }]\n}\n',
      },
    ],
    passes: [
      {
        name: "a template whose text is at fault all the same",
        file: "datasets/jobs/test-set/job.json",
        text: '{\n  "format": 1,\n  "title": "Test set",\n  "chassis": { "era": 1950, "line": { "designVolts": "117 V", "hertz": 60 } },\n  "stages": [{ "id": "supply", "template": "small-supply", "bind": { "hv": "T1 red", "b-plus": "B+" } }]\n}\n',
        others: { [AT.stage]: SOUND_FILES[AT.stage].replace("for tests of", "safe for tests of") },
      },
    ],
  },
  grader,
);
