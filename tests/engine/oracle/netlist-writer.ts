/** Collects the lines of a netlist for the simulator, and remembers where each figure can be read. */

/** A current: read from a simulator vector, or a voltage between two nodes over a resistance, or a constant. */
export type CurrentReading =
  | { from: "vector"; vector: string }
  | { from: "ohms"; nodes: readonly [string, string]; ohms: number }
  | { from: "constant"; amps: number };

/** Something the circuit remembers: read as `v(plus) - v(minus)` or as a vector; set again by its name. */
export interface StateReading {
  name: string;
  plus: string;
  minus?: string;
}

/** One line of the report: an element, or a winding of a transformer. */
export interface ElementReading {
  nodes: readonly [string, string];
  current: CurrentReading;
  /** Winding resistance, when heat is I^2 R and not the power that goes through. */
  heatOhms?: number;
  /** Grid and cathode nodes of a tube with a grid. */
  grid?: readonly [string, string];
  /** Further electrodes of a tube, with the nodes their power is counted between. */
  electrodes?: Record<string, { nodes: readonly [string, string]; current: CurrentReading }>;
}

export class NetlistWriter {
  readonly lines: string[] = [];
  readonly readings = new Map<string, ElementReading>();
  readonly states: StateReading[] = [];
  readonly saved = new Set<string>();
  readonly pointNodes = new Map<string, string>();
  private counter = 0;
  private readonly reference: string;
  private readonly initial: ReadonlyMap<string, number>;

  constructor(reference: string, initial: ReadonlyMap<string, number>) {
    this.reference = reference;
    this.initial = initial;
  }

  /** Simulator node of one of our points. */
  node(point: string): string {
    if (point === this.reference) return "0";
    const known = this.pointNodes.get(point);
    if (known !== undefined) return known;
    const node = `p${this.pointNodes.size + 1}`;
    this.pointNodes.set(point, node);
    this.saved.add(`v(${node})`);
    return node;
  }

  /** A fresh name: `x` and a number. */
  fresh(prefix: string): string {
    this.counter += 1;
    return `${prefix}${this.counter}`;
  }

  line(text: string): void {
    this.lines.push(text);
  }

  /** Puts an ammeter (a source of no volts) after `from`; returns its name, the node behind it and the reading. */
  ammeter(from: string): { name: string; node: string; current: CurrentReading } {
    const name = this.fresh("va");
    const node = this.fresh("x");
    this.line(`${name} ${from} ${node} 0`);
    this.saved.add(`i(${name})`);
    return { name, node, current: { from: "vector", vector: `i(${name})` } };
  }

  /** Notes a voltage the circuit remembers, and returns the text that sets it at the start. */
  voltageState(name: string, plus: string, minus: string): string {
    for (const node of [plus, minus]) if (node !== "0") this.saved.add(`v(${node})`);
    this.states.push({ name, plus: `v(${plus})`, minus: `v(${minus})` });
    return `ic=${this.initial.get(name) ?? 0}`;
  }

  /** Notes a coil current the circuit remembers, and returns the text that sets it at the start. */
  currentState(name: string, vector: string): string {
    this.saved.add(vector);
    this.states.push({ name, plus: vector });
    return `ic=${this.initial.get(name) ?? 0}`;
  }
}
