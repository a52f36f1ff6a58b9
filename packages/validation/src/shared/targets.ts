import { isRecord, listOf, type Path, textOf } from "@underchassis/source-text";

/** Calls `visit` for every text of a value with its path, property names not included. */
export function eachText(value: unknown, visit: (text: string, path: Path) => void, path: Path = []): void {
  if (typeof value === "string") visit(value, path);
  else if (Array.isArray(value)) {
    for (let index = 0; index < value.length; index++) {
      const item: unknown = value[index];
      if (typeof item === "string" || (typeof item === "object" && item !== null)) eachText(item, visit, [...path, index]);
    }
  } else if (isRecord(value)) {
    for (const name of Object.keys(value)) {
      const member = value[name];
      if (typeof member === "string" || (typeof member === "object" && member !== null)) eachText(member, visit, [...path, name]);
    }
  }
}

/** The texts of a list property, with their paths. */
export function textsOf(list: unknown, path: Path): { text: string; path: Path }[] {
  return listOf(list).flatMap((item, index) => {
    const text = textOf(item);
    return text === undefined ? [] : [{ text, path: [...path, index] }];
  });
}
