import { emptyWords } from "../view/emptyWords.ts";
import type { TextContext } from "./textContext.ts";
import { hang } from "./wrapText.ts";

const byName = new Intl.Collator("en", { numeric: true });

/** What to order, one line for the part or parts that it is for, with a box to tick. */
export function orderLines({ sheet, width }: TextContext): string[] {
  const groups = new Map<string, string[]>();
  for (const item of sheet.report.order) {
    const parts = item.for.join(", ");
    groups.set(parts, [...(groups.get(parts) ?? []), `${item.quantity} x ${item.what}`]);
  }
  if (groups.size === 0) return hang("  ", emptyWords.order, width);
  const several = [...groups.values()].some((items) => items.length > 1);
  return [
    ...(several ? hang("  ", "Several entries for one part answer several findings: settle what to fit before ordering.", width) : []),
    ...[...groups]
      .sort(([one], [other]) => byName.compare(one, other))
      .flatMap(([parts, items]) => hang("  [ ] ", `${parts}: ${items.join("; ")}`, width)),
  ];
}
