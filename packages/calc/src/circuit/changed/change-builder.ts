import { CircuitBuilder } from "../circuit-builder.ts";
import type { PortDevice } from "../devices/port-device.ts";

/** A device of a circuit with the rows of its ports. */
export interface PlacedDevice {
  id: string;
  device: PortDevice;
  /** Row of each port's two points; -1 is the reference. */
  plus: readonly number[];
  minus: readonly number[];
}

/**
 * Stamps single elements onto the rows of a circuit laid out before, and on new rows behind them. Devices are only placed: no
 * conductance is lent to the network for them.
 */
export class ChangeBuilder extends CircuitBuilder {
  readonly placed: PlacedDevice[] = [];
  /** Rows of branch currents, cores and inner points that the elements stamped here have. */
  readonly owned = new Set<number>();
  private readonly known: ReadonlyMap<string, number>;

  constructor(reference: string, rowNames: readonly string[], rowIndex: ReadonlyMap<string, number>) {
    super(reference);
    this.known = rowIndex;
    for (const name of rowNames) this.rowNames.push(name);
  }

  override row(name: string): number {
    const known = this.known.get(name);
    const row = known ?? this.rowNames.push(name) - 1;
    if (!name.startsWith("point ")) this.owned.add(row);
    return row;
  }

  override device(device: PortDevice): void {
    this.placed.push({
      id: device.id,
      device,
      plus: device.ports.map(([plus]) => this.point(plus)),
      minus: device.ports.map(([, minus]) => this.point(minus)),
    });
  }
}
