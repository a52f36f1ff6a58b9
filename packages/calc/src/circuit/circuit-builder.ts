import type { Conditions, PortSlot, Stamps, StateSlot } from "./circuit.ts";
import { BRANCH_OHMS, CONTACT_OHMS, CORE_HENRIES } from "./constants.ts";
import { makeDevice } from "./devices/make-device.ts";
import type { PortDevice } from "./devices/port-device.ts";
import type { Element, Transformer } from "./network.ts";

/** Stamps elements one by one onto rows that it lays out as it goes, or onto rows laid out before. */
export class CircuitBuilder {
  readonly rowNames: string[] = [];
  readonly pointRows = new Map<string, number>();
  readonly branchRows = new Map<string, number>();
  readonly innerRows = new Map<string, number>();
  readonly stateIndex = new Map<string, number>();
  readonly portIndex = new Map<string, number>();
  readonly resistances = new Map<string, number>();
  readonly stamps: Stamps = { rows: [], columns: [], values: [] };
  readonly states: StateSlot[] = [];
  readonly devices: PortDevice[] = [];
  readonly ports: PortSlot[] = [];
  readonly constant: [row: number, value: number][] = [];
  readonly sines: [row: number, amplitude: number, hertz: number, phase: number][] = [];
  /** Rows laid down by an earlier layout, when single elements are stamped anew. */
  private readonly laid: ReadonlyMap<string, number> | undefined;

  constructor(reference: string, laid?: ReadonlyMap<string, number>) {
    this.pointRows.set(reference, -1);
    this.laid = laid;
  }

  row(name: string): number {
    const laid = this.laid?.get(name);
    if (laid !== undefined) return laid;
    this.rowNames.push(name);
    return this.rowNames.length - 1;
  }

  point(name: string): number {
    const known = this.pointRows.get(name);
    if (known !== undefined) return known;
    const row = this.row(`point ${name}`);
    this.pointRows.set(name, row);
    return row;
  }

  stamp(row: number, column: number, value: number): void {
    if (row < 0 || column < 0) return;
    this.stamps.rows.push(row);
    this.stamps.columns.push(column);
    this.stamps.values.push(value);
  }

  conductance(plus: number, minus: number, siemens: number): void {
    this.stamp(plus, plus, siemens);
    this.stamp(minus, minus, siemens);
    this.stamp(plus, minus, -siemens);
    this.stamp(minus, plus, -siemens);
  }

  /** A branch current with v(plus) - v(minus) - ohms * i = ...; returns its row. */
  branch(name: string, plus: number, minus: number, ohms: number): number {
    const row = this.row(`current of ${name}`);
    this.branchRows.set(name, row);
    this.stamp(plus, row, 1);
    this.stamp(minus, row, -1);
    this.stamp(row, plus, 1);
    this.stamp(row, minus, -1);
    this.stamp(row, row, -ohms);
    return row;
  }

  resistance(id: string, plus: number, minus: number, ohms: number): void {
    this.resistances.set(id, ohms);
    if (ohms < BRANCH_OHMS) this.branch(id, plus, minus, ohms);
    else this.conductance(plus, minus, 1 / ohms);
  }

  store(id: string, kind: StateSlot["kind"], coefficient: number, plus: number, minus: number): void {
    this.stateIndex.set(id, this.states.length);
    this.states.push({ id, kind, coefficient, plus, minus });
  }

  /** Windings share one voltage per turn; their ampere-turns add up to those of the magnetizing current. */
  transformer(element: Transformer): void {
    const core = this.row(`volts per turn of ${element.id}`);
    for (const winding of element.windings) {
      const row = this.branch(`${element.id}.${winding.id}`, this.point(winding.nodes[0]), this.point(winding.nodes[1]), winding.ohms);
      this.stamp(row, core, -winding.turns);
      this.stamp(core, row, -winding.turns);
    }
    const magnetizing = this.row(`magnetizing current of ${element.id}`);
    const turns = element.windings[0]!.turns;
    this.stamp(magnetizing, core, turns);
    this.stamp(core, magnetizing, turns);
    this.store(element.id, "amps", -(element.magnetizingHenries ?? CORE_HENRIES), magnetizing, -1);
  }

  device(device: PortDevice): void {
    this.portIndex.set(device.id, this.ports.length);
    this.devices.push(device);
    device.ports.forEach((pair, index) => {
      const slot = { plus: this.point(pair[0]), minus: this.point(pair[1]), lent: device.lent[index]! };
      this.ports.push(slot);
      this.conductance(slot.plus, slot.minus, slot.lent);
    });
  }

  add(element: Element, conditions: Conditions): void {
    const device = makeDevice(element, conditions.lit.has(element.id));
    if (device !== undefined) {
      this.device(device);
      return;
    }
    if (element.kind === "transformer") {
      this.transformer(element);
      return;
    }
    if (element.kind === "triode" || element.kind === "pentode") return;
    const plus = this.point(element.nodes[0]);
    const minus = this.point(element.nodes[1]);
    switch (element.kind) {
      case "resistor":
      case "voltmeter":
        this.resistance(element.id, plus, minus, element.ohms);
        return;
      case "switch":
        this.resistance(element.id, plus, minus, element.contactOhms ?? CONTACT_OHMS);
        return;
      case "filament":
        this.resistance(element.id, plus, minus, conditions.ohms.get(element.id) ?? element.ratedOhms);
        return;
      case "thermistor":
        this.resistance(element.id, plus, minus, conditions.ohms.get(element.id) ?? element.r25Ohms);
        return;
      case "capacitor": {
        let inner = plus;
        if ((element.esrOhms ?? 0) > 0) {
          inner = this.row(`inside of ${element.id}`);
          this.innerRows.set(element.id, inner);
          this.conductance(plus, inner, 1 / element.esrOhms!);
        }
        this.conductance(inner, minus, element.leakOhms === undefined ? 0 : 1 / element.leakOhms);
        this.store(element.id, "volts", element.farads, inner, minus);
        return;
      }
      case "inductor": {
        const row = this.branch(element.id, plus, minus, element.dcrOhms ?? 0);
        this.store(element.id, "amps", -element.henries, row, -1);
        return;
      }
      case "voltage-source": {
        const row = this.branch(element.id, plus, minus, 0);
        this.constant.push([row, element.dcVolts ?? 0]);
        const rms = element.rmsVolts ?? 0;
        if (rms > 0) this.sines.push([row, Math.SQRT2 * rms, element.hertz!, element.phaseRadians ?? 0]);
        return;
      }
      case "current-source":
        this.constant.push([plus, -element.amps], [minus, element.amps]);
        return;
    }
  }
}
