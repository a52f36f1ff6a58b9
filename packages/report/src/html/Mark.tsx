/** @jsxRuntime automatic @jsxImportSource preact */
import { type Severity, severityWords } from "../view/words.ts";

/** A severity: always its word; frame and weight differ too, so that nothing hangs on colour. */
export function Mark({ severity }: { severity: Severity }) {
  return <strong class={`mark ${severity}`}>{severityWords[severity]}</strong>;
}
