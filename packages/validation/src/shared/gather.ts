import type { Complaint } from "../model/rule.ts";

const NONE: readonly Complaint[] = [];

/** What there is to say of each item, in order. As `flatMap`, but without a list for the many files of which nothing is said. */
export function gather<T>(items: readonly T[], say: (item: T, index: number) => readonly Complaint[]): readonly Complaint[] {
  let found: Complaint[] | undefined;
  for (let index = 0; index < items.length; index++) {
    const said = say(items[index]!, index);
    if (said.length === 0) continue;
    found ??= [];
    for (const complaint of said) found.push(complaint);
  }
  return found ?? NONE;
}

/** Nothing to say. */
export const nothing = (): readonly Complaint[] => NONE;
