/** What fails in a transformer. Windings of the compiled network: `hv-1` and `hv-2` are the halves of `hv`. */
import type { Transformer } from "@underchassis/calc";

/** The transformer without one winding or half of one. */
export function windingOpen(element: Transformer, winding: string): Transformer {
  const windings = element.windings.filter(({ id }) => id !== winding);
  if (windings.length === element.windings.length || windings.length === 0) throw new Error(`${element.id} cannot lose ${winding}`);
  return { ...element, windings };
}

/**
 * A share of a winding's turns with their ends together: the rest has fewer turns and less wire, and what is shorted is a winding of its own
 * that its own wire alone limits.
 */
export function shortedTurns(element: Transformer, winding: string, share: number): Transformer {
  const failing = element.windings.find(({ id }) => id === winding);
  if (failing === undefined || !(share > 0 && share < 1)) throw new Error(`${element.id} cannot short ${share} of ${winding}`);
  const rest = { ...failing, turns: failing.turns * (1 - share), ohms: failing.ohms * (1 - share) };
  const [end] = failing.nodes;
  const loop = { id: `${winding}-shorted`, nodes: [end, end] as const, turns: failing.turns * share, ohms: failing.ohms * share };
  return { ...element, windings: [...element.windings.map((each) => (each === failing ? rest : each)), loop] };
}
