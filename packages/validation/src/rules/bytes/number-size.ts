import type { BytesRule } from "../../model/rule.ts";
import { matchComplaints } from "../../shared/matchComplaints.ts";
import { syntaxComplaints } from "../../shared/syntaxComplaints.ts";

const LARGEST_EXPONENT = 15;
/** A number outside texts: texts are taken whole and passed over. */
const TOKENS = /"(?:[^"\\\n]|\\.)*"|-?\d+(?:\.\d+)?(?:[eE][-+]?\d+)?/g;
const DIGITS = /^-?0*(?:0\.0*)?|\.|[eE].*$/g;

/** Numbers are ones that a meter or a sheet could give. */
export const numberSize: BytesRule = {
  code: "UC-205",
  name: "number-size",
  scope: "bytes",
  severity: "error",
  title: "Numbers are below 1e15 and have at most 17 figures",
  why: "Beyond that a program keeps another number than the one that is written.",
  bad: '"farads": 1e400',
  good: '"farads": 2e-5',
  check(file) {
    if (!file.path.endsWith(".json") || !file.utf8) return [];
    const beyond = syntaxComplaints(file, (code) => code === "number-not-finite");
    // The reader has noticed what is beyond 1e15, or has many figures.
    if (file.value?.odd === false) return beyond;
    const odd = matchComplaints(file.source().text, TOKENS, (token) => ({ message: token })).filter(
      ({ message }) => !message.startsWith('"'),
    );
    return [
      ...beyond,
      ...odd.flatMap(({ at, message: token }) => {
        const value = Math.abs(Number(token));
        const figures = token.replace(DIGITS, "").length;
        if (!Number.isFinite(value) || (value < 10 ** LARGEST_EXPONENT && figures <= 17)) return [];
        const message = figures > 17 ? "a number with more figures than a program keeps" : "a number beyond all measure";
        return [{ ...(at === undefined ? {} : { at }), message, received: token, expected: "at most 17 figures, below 1e15" }];
      }),
    ];
  },
};
