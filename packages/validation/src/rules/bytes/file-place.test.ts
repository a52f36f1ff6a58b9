import { testRule } from "../../testing/ruleCase.ts";

import { filePlace } from "./file-place.ts";

testRule(filePlace, {
  fires: [
    { name: "a misspelt folder", file: "datasets/tube/6x5.json", text: "{}", nearest: "datasets/tubes/6x5.json", whole: true },
    { name: "an unknown ending", file: "datasets/tubes/6x5.yaml", text: "id: 6x5", whole: true },
  ],
  passes: [{ name: "a known place", file: "datasets/tubes/6x5.json", text: "{}" }],
});
