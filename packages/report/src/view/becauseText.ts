/** Names that are printed; a caution that half the chassis calls for needs no full list. */
const most = 8;

/** What calls for a caution: "C1, C2 and 12 more"; "" for one that is always printed. */
export function becauseText(names: readonly string[]): string {
  const named = names.slice(0, most).join(", ");
  return names.length > most ? `${named} and ${names.length - most} more` : named;
}
