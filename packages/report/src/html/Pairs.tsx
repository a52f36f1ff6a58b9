/** @jsxRuntime automatic @jsxImportSource preact */
import type { ComponentChildren } from "preact";

/** Labels with their text; pairs without text are left out. */
export function Pairs({ pairs }: { pairs: readonly (readonly [string, ComponentChildren])[] }) {
  const filled = pairs.filter(([, content]) => content !== undefined && content !== "" && content !== false && content !== null);
  return (
    <dl class="pairs">
      {filled.map(([label, content], index) => (
        <div key={index}>
          <dt>{label}</dt>
          <dd>{content}</dd>
        </div>
      ))}
    </dl>
  );
}
