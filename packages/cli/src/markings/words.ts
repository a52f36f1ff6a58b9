import type { Tolerance } from "@underchassis/calc";

const percent = (share: number): string => `${Number((share * 100).toPrecision(4))}`;

/** "+-10 %", "-10 +50 %". */
export function toleranceWords({ minus, plus }: Tolerance): string {
  return minus === plus ? `+-${percent(plus)} %` : `-${percent(minus)} +${percent(plus)} %`;
}

/** "+8 %", "-6 %", "the same". */
export function deviationWords(share: number): string {
  if (share === 0) return "the same";
  const rounded = Number((share * 100).toPrecision(3));
  return `${rounded > 0 ? "+" : ""}${rounded} %`;
}
