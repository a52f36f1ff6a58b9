import { createColors } from "picocolors";
import type { Severity } from "../view/words.ts";

type Stroke = (text: string) => string;

/** Terminal attributes by meaning. Without colour every stroke gives the text back unchanged. */
export interface Paint {
  title: Stroke;
  quiet: Stroke;
  severity: Readonly<Record<Severity, Stroke>>;
}

/** Strokes for a terminal; `colour` false for files and pipes. */
export function paintOf(colour: boolean): Paint {
  const pen = createColors(colour);
  return {
    title: pen.bold,
    quiet: pen.dim,
    severity: {
      danger: (text) => pen.bold(pen.red(text)),
      replace: pen.red,
      adjust: pen.yellow,
      watch: pen.cyan,
      unmeasured: pen.magenta,
      good: pen.green,
    },
  };
}
