import type { Fault } from "./fault.ts";

/** The end of the file amid something: where the innermost open bracket stands tells what was cut off. */
export function endFault(text: string, offset: number): Fault {
  const open = openBrackets(text);
  const last = open.at(-1);
  const what = last === undefined ? "a value" : `a closing ${text[last] === "{" ? "}" : "]"}`;
  const line = last === undefined ? 0 : text.slice(0, last).split("\n").length;
  return {
    offset,
    length: 1,
    code: "bracket-unclosed",
    message: `the file ends before ${what}`,
    expected: "a closing bracket for every opening one",
    ...(last === undefined
      ? {}
      : {
          help: open.length === 1 ? `one bracket is open, of line ${line}` : `${open.length} brackets are open, the last of line ${line}`,
        }),
  };
}

/** Offsets of the brackets that nothing closes, outermost first; what stands in quotes is passed over. */
function openBrackets(text: string): number[] {
  const open: number[] = [];
  for (const { 0: token, index } of text.matchAll(/"(?:[^"\\\n]|\\.)*"?|[{}[\]]/g)) {
    if (token === "{" || token === "[") open.push(index);
    else if (token === "}" || token === "]") open.pop();
  }
  return open;
}
