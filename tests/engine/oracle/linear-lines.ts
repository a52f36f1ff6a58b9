/** Parts whose law is a straight line, coils with a swing, and warm wires. */
import type { Capacitor, CurrentSource, Filament, Inductor, Thermistor, Transformer, VoltageSource } from "@underchassis/calc";
import type { NetlistWriter } from "./netlist-writer.ts";

export function resistorLines(writer: NetlistWriter, id: string, points: readonly [string, string], ohms: number): void {
  const nodes: [string, string] = [writer.node(points[0]), writer.node(points[1])];
  writer.line(`${writer.fresh("r")} ${nodes[0]} ${nodes[1]} ${ohms}`);
  writer.readings.set(id, { nodes, current: { from: "ohms", nodes, ohms } });
}

/** Series resistance, behind it the ideal capacitor with its leak across. */
export function capacitorLines(writer: NetlistWriter, element: Capacitor): void {
  const [a, b] = [writer.node(element.nodes[0]), writer.node(element.nodes[1])];
  const meter = writer.ammeter(a);
  let inner = meter.node;
  if (element.esrOhms !== undefined && element.esrOhms > 0) {
    inner = writer.fresh("x");
    writer.line(`${writer.fresh("r")} ${meter.node} ${inner} ${element.esrOhms}`);
  }
  if (element.leakOhms !== undefined) writer.line(`${writer.fresh("r")} ${inner} ${b} ${element.leakOhms}`);
  writer.line(`${writer.fresh("c")} ${inner} ${b} ${element.farads} ${writer.voltageState(element.id, inner, b)}`);
  writer.readings.set(element.id, { nodes: [a, b], current: meter.current });
}

/** With `swing`, v = L(i) di/dt: the current is the voltage of a node that integrates v / L(i) on one farad. */
export function inductorLines(writer: NetlistWriter, element: Inductor): void {
  const [a, b] = [writer.node(element.nodes[0]), writer.node(element.nodes[1])];
  let inner = a;
  if (element.dcrOhms !== undefined && element.dcrOhms > 0) {
    inner = writer.fresh("x");
    writer.line(`${writer.fresh("r")} ${a} ${inner} ${element.dcrOhms}`);
  }
  if (element.swing === undefined) {
    const name = writer.fresh("l");
    writer.line(`${name} ${inner} ${b} ${element.henries} ${writer.currentState(element.id, `i(${name})`)}`);
    writer.readings.set(element.id, { nodes: [a, b], current: { from: "vector", vector: `i(${name})` } });
    return;
  }
  const { residualHenries, halfAmps } = element.swing;
  const amps = writer.fresh("x");
  const henries = `(${residualHenries}+${element.henries - residualHenries}/(1+v(${amps})*v(${amps})/${halfAmps * halfAmps}))`;
  writer.line(`${writer.fresh("b")} 0 ${amps} i=v(${inner},${b})/${henries}`);
  writer.line(`${writer.fresh("c")} ${amps} 0 1 ${writer.voltageState(element.id, amps, "0")}`);
  writer.line(`${writer.fresh("g")} ${inner} ${b} ${amps} 0 1`);
  writer.readings.set(element.id, { nodes: [a, b], current: { from: "vector", vector: `v(${amps})` } });
}

/** Ideal windings driven by the first one's ideal part; each secondary current comes back there times its turns ratio. */
export function transformerLines(writer: NetlistWriter, element: Transformer): void {
  const [first, ...others] = element.windings;
  if (first === undefined) throw new Error(`${element.id} has no windings`);
  const ideal = (winding: (typeof element.windings)[number]): { start: string; end: string; meter: string } => {
    const [a, end] = [writer.node(winding.nodes[0]), writer.node(winding.nodes[1])];
    const meter = writer.ammeter(a);
    let start = meter.node;
    if (winding.ohms > 0) {
      start = writer.fresh("x");
      writer.line(`${writer.fresh("r")} ${meter.node} ${start} ${winding.ohms}`);
    }
    writer.readings.set(`${element.id}.${winding.id}`, { nodes: [a, end], current: meter.current, heatOhms: winding.ohms });
    return { start, end, meter: meter.name };
  };
  const primary = ideal(first);
  if (element.magnetizingHenries !== undefined) {
    const name = writer.fresh("l");
    const initial = writer.currentState(element.id, `i(${name})`);
    writer.line(`${name} ${primary.start} ${primary.end} ${element.magnetizingHenries} ${initial}`);
  }
  for (const winding of others) {
    const { start, end, meter } = ideal(winding);
    const ratio = winding.turns / first.turns;
    writer.line(`${writer.fresh("e")} ${start} ${end} ${primary.start} ${primary.end} ${ratio}`);
    writer.line(`${writer.fresh("f")} ${primary.start} ${primary.end} ${meter} ${-ratio}`);
  }
}

/** `unitSignal` puts the small-signal drive into this source. */
export function voltageSourceLines(writer: NetlistWriter, element: VoltageSource, unitSignal: boolean): void {
  const [a, b] = [writer.node(element.nodes[0]), writer.node(element.nodes[1])];
  const name = writer.fresh("vs");
  const dc = element.dcVolts ?? 0;
  const peak = Math.SQRT2 * (element.rmsVolts ?? 0);
  const degrees = ((element.phaseRadians ?? 0) * 180) / Math.PI;
  const sine = peak === 0 ? "" : ` sin(${dc} ${peak} ${element.hertz ?? 0} 0 0 ${degrees})`;
  writer.line(`${name} ${a} ${b} dc ${dc}${unitSignal ? " ac 1" : ""}${sine}`);
  writer.saved.add(`i(${name})`);
  writer.readings.set(element.id, { nodes: [a, b], current: { from: "vector", vector: `i(${name})` } });
}

export function currentSourceLines(writer: NetlistWriter, element: CurrentSource): void {
  const nodes: [string, string] = [writer.node(element.nodes[0]), writer.node(element.nodes[1])];
  writer.line(`${writer.fresh("i")} ${nodes[0]} ${nodes[1]} dc ${element.amps}`);
  writer.readings.set(element.id, { nodes, current: { from: "constant", amps: element.amps } });
}

/** At DC only, where the RMS current is the current: v = i R(|i|). */
export function filamentLines(writer: NetlistWriter, element: Filament): void {
  const [a, b] = [writer.node(element.nodes[0]), writer.node(element.nodes[1])];
  const meter = writer.ammeter(a);
  const amps = `i(${meter.name})`;
  const rise = element.ratedOhms - element.coldOhms;
  const ohms = `(${element.coldOhms}+${rise}*pwr(abs(${amps})/${element.ratedAmps},${element.exponent ?? 1.2}))`;
  writer.line(`${writer.fresh("b")} ${meter.node} ${b} v=${amps}*${ohms}`);
  writer.readings.set(element.id, { nodes: [a, b], current: meter.current });
}

/** At DC only: the rise above ambient is the voltage of a node fed with the dissipation into 1/delta. */
export function thermistorLines(writer: NetlistWriter, element: Thermistor): void {
  const [a, b] = [writer.node(element.nodes[0]), writer.node(element.nodes[1])];
  const meter = writer.ammeter(a);
  const amps = `i(${meter.name})`;
  const rise = writer.fresh("x");
  const kelvin = `(${element.ambientKelvin ?? 298.15}+v(${rise}))`;
  writer.line(`${writer.fresh("b")} 0 ${rise} i=v(${meter.node},${b})*${amps}`);
  writer.line(`${writer.fresh("r")} ${rise} 0 ${1 / element.deltaWattsPerKelvin}`);
  writer.line(`${writer.fresh("b")} ${meter.node} ${b} v=${amps}*${element.r25Ohms}*exp(${element.betaKelvin}*(1/${kelvin}-1/298.15))`);
  writer.readings.set(element.id, { nodes: [a, b], current: meter.current });
}
