// Generated from schemas/failure-note.schema.json; run npm run generate. Changes made here are lost.

/**
 * One way in which one kind of part fails: how it shows, what proves it, what it takes out next, the cure.
 */
export interface FailureNote {
  $schema?: string;
  schemaVersion: 1;
  id: string;
  title: string;
  partKind:
    | "resistor"
    | "potentiometer"
    | "capacitor"
    | "inductor"
    | "transformer"
    | "rectifier"
    | "zener"
    | "tube"
    | "regulator-tube"
    | "fuse"
    | "breaker"
    | "switch"
    | "thermistor"
    | "lamp"
    | "cord"
    | "wire"
    | "load"
    | "battery"
    | "wiring";
  roles?: string[];
  era?: {
    from?: number;
    to?: number;
  };
  mechanism: string;
  symptom: {
    text: string;
    quantity?: "dc-volts" | "ac-volts" | "ripple-volts" | "ohms" | "dc-amps" | "ac-amps";
    direction?: "low" | "high" | "zero" | "present" | "unsteady";
    size?: string;
  };
  measurement: {
    text: string;
    quantity?:
      | "resistance"
      | "capacitance"
      | "leakage"
      | "esr"
      | "inductance"
      | "dcr"
      | "emission"
      | "continuity"
      | "insulation"
      | "dc-volts"
      | "ac-volts"
      | "ripple-volts"
      | "dc-amps"
      | "ac-amps";
    limit?: string;
  };
  takesOutNext?: string[];
  cure: string;
  /**
   * Where practitioners disagree: each view with its source.
   */
  schools?: {
    view: string;
    source: string;
  }[];
  cautions?: string[];
  /**
   * Relative frequency among faults of this part kind; a judgement unless the source says otherwise.
   */
  frequency?: "very-common" | "common" | "occasional" | "rare";
  sources: string[];
}
