import { nearestSpelling } from "../../quantities/nearestSpelling.ts";
import { problem, quoted } from "../../quantities/problem.ts";
import type { ReadingProblem } from "../../quantities/types.ts";
import { colourNamed, colours } from "../colours.ts";

/** Words that stand beside colours and are none. */
const otherWords =
  /^(?:mica|paper|ceramic|film|polyester|disc|disk|tubular|mould(?:ed)?|mold(?:ed)?|dots?|bands?|body|ends?|other|center|centre|resistor|capacitor|carbon|composition|comp|metal|wirewound|wire|wound|no|colou?r|watts?|volts?)$/i;

/** The first word among colours that is no colour but looks like one, as a problem; undefined when there is none. */
export function misspeltColour(text: string): ReadingProblem | undefined {
  const words = [...text.matchAll(/[A-Za-z]{2,}/g)];
  if (!words.some(([word]) => colourNamed(word) !== undefined)) return undefined;
  for (const found of words) {
    const [word] = found;
    if (colourNamed(word) !== undefined || otherWords.test(word)) continue;
    const nearest = nearestSpelling(word, colours);
    if (nearest === undefined && /\d/.test(text)) continue;
    const put = nearest === undefined ? undefined : text.slice(0, found.index) + nearest + text.slice(found.index + word.length);
    return problem(`${quoted(word)} is not a colour of the code`, found.index, word.length, `one of ${colours.join(", ")}`, put).problem;
  }
  return undefined;
}
