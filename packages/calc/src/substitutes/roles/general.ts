import { resistorRole } from "../resistorRole.ts";

/** Any resistor without a special duty: nearest preferred value, twice the watts (reference section 1.3; rules R6 to R8). */
export const general = resistorRole({
  id: "general",
  title: "Plate, screen, grid or other resistor",
  limitRule: { text: "within the old part's tolerance; the nearest value is the best", source: "common-practice" },
  times: 2,
  make: ["metal film or metal oxide; carbon film where the look matters"],
  rules: [
    { text: "a part within 20 % of its mark may stay; 10 % in bias, AVC, dividers and meters", source: "restorer-posts" },
    { text: "composition that has drawn moisture reads high: bake it dry before it is condemned", source: "mil-r-39008c" },
  ],
});
