import { resistorRole } from "../resistorRole.ts";

/** B+ isolation: the same watts, because it acts as a fuse (rule R7). */
export const isolation = resistorRole({
  id: "isolation",
  title: "B+ isolation or decoupling resistor",
  limitRule: { text: "within the old part's tolerance", source: "common-practice" },
  times: 1,
  rate: (rating) =>
    rating.quantity === "watts"
      ? {
          ...rating,
          standard: rating.least,
          most: rating.least,
          rule: { text: "exactly the old part's watts: it is the fuse of what stands behind it", source: "restorer-posts" },
        }
      : rating,
  make: ["flameproof metal film or a fusible resistor of the same watts"],
  rules: [{ text: "a larger one outlives the short that it should have opened on, and the transformer pays", source: "restorer-posts" }],
});
