import { isRecord, listOf, type Path, textOf } from "@underchassis/source-text";

/** Calls `visit` for every text of a value with its path, property names not included. The path is made only when it is asked for. */
export function eachText(value: unknown, visit: (text: string, path: () => Path) => void): void {
  const stack: (string | number)[] = [];
  const path = (): Path => [...stack];
  const walk = (at: unknown): void => {
    if (typeof at === "string") visit(at, path);
    else if (Array.isArray(at)) {
      for (let index = 0; index < at.length; index++) {
        stack.push(index);
        walk(at[index]);
        stack.pop();
      }
    } else if (isRecord(at)) {
      for (const name in at) {
        stack.push(name);
        walk(at[name]);
        stack.pop();
      }
    }
  };
  walk(value);
}

/** The texts of a list property, with their paths. */
export function textsOf(list: unknown, path: Path): { text: string; path: Path }[] {
  return listOf(list).flatMap((item, index) => {
    const text = textOf(item);
    return text === undefined ? [] : [{ text, path: [...path, index] }];
  });
}
