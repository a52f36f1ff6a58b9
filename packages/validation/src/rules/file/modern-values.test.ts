import { testRule } from "../../testing/ruleCase.ts";

import { modernValues } from "./modern-values.ts";

testRule(modernValues, {
  fires: [
    {
      name: "not the nearest",
      file: "datasets/tables/historic-electrolytics.csv",
      text: "oldMicrofarads,e12Microfarads,e12Percent,e6UpMicrofarads,e6UpPercent,source\n8,«6.8»,2.5,10,25,from-memory\n",
    },
    {
      name: "a deviation worked out wrong",
      file: "datasets/tables/historic-electrolytics.csv",
      text: "oldMicrofarads,e12Microfarads,e12Percent,e6UpMicrofarads,e6UpPercent,source\n8,8.2,2.5,10,«20»,from-memory\n",
    },
  ],
  passes: [
    {
      name: "8 uF by hand: 8.2 is 2.5 % more, 10 is 25 % more",
      file: "datasets/tables/historic-electrolytics.csv",
      text: "oldMicrofarads,e12Microfarads,e12Percent,e6UpMicrofarads,e6UpPercent,source\n8,8.2,2.5,10,25,from-memory\n",
    },
  ],
});
