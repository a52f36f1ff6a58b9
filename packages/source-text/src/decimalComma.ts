import type { Fault } from "./fault.ts";

/** A comma inside a number: `0,0048`. */
export function decimalComma(text: string, offset: number, before: { offset: number; char: string }): Fault | undefined {
  if (before.char !== "," || before.offset !== offset - 1) return undefined;
  const [whole] = /[-+]?\d+$/.exec(text.slice(Math.max(0, before.offset - 20), before.offset)) ?? [];
  const [rest] = /^\d+(?:e-?\d+)?/i.exec(text.slice(offset, offset + 40)) ?? [];
  if (whole === undefined || rest === undefined) return undefined;
  return {
    offset: before.offset - whole.length,
    length: whole.length + 1 + rest.length,
    code: "decimal-comma",
    message: "a comma inside a number",
    received: `${whole},${rest}`,
    expected: "a point before the decimals",
    nearest: `${whole}.${rest}`,
  };
}
