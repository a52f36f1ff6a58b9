import type { ChassisModel, Life, Part, PartState } from "../../model/index.ts";
import { allIn, endsOf, type Placed } from "./layout.ts";

/** A capacitor through which direct current could reach a grid. */
export interface GridPath {
  /** The tube of that grid; undefined where the job counts it as a load. */
  tube: Placed | undefined;
  capacitor: Part;
  capacitorState: PartState;
  /** Its end on the grid's side, and on the other. */
  gridSide: string;
  source: string;
  /** Points at the grid's own potential while no grid current flows: the grid and what stoppers join to it. */
  gridPoints: ReadonlySet<string>;
}

/** Every capacitor between a tube's grid (stoppers included) and another point, and every coupling capacitor to a tube not modelled. */
export function gridPaths(model: ChassisModel, life: Life): GridPath[] {
  const stoppers = allIn(model, life, "resistor").filter(({ part }) => part.duty === "stopper");
  const capacitors = allIn(model, life, "capacitor");
  const joinedTo = joinedPoints(model, life);
  const toTubes = allIn(model, life, "tube").flatMap((tube) => {
    const grid = tube.state.pins.grid;
    if (grid === undefined || grid === model.reference) return [];
    const here = joinedTo(grid);
    const gridPoints = new Set([
      ...here,
      ...stoppers.flatMap(({ state }) => (endsOf(state)?.some((point) => here.includes(point)) === true ? (endsOf(state) ?? []) : [])),
    ]);
    gridPoints.delete(model.reference);
    return capacitors.flatMap((capacitor) => pathThrough(capacitor, tube, gridPoints));
  });
  const covered = new Set(toTubes.map(({ capacitor }) => capacitor.id));
  const toOthers = capacitors.flatMap((capacitor): GridPath[] => {
    // The positive side, the plate that drives, stands first.
    const ends = endsOf(capacitor.state);
    const isOther =
      capacitor.part.duty === "coupling" && !covered.has(capacitor.part.id) && ends !== undefined && ends[1] !== model.reference;
    return isOther ? pathThrough(capacitor, undefined, new Set([ends[1]])) : [];
  });
  return [...toTubes, ...toOthers];
}

/** Points that are one with another through wires and series parts that this chassis does not have. */
function joinedPoints(model: ChassisModel, life: Life): (point: string) => readonly string[] {
  const condition = [...model.conditions.values()].find(({ powered, like }) => powered && like === "operating")?.id;
  if (condition === undefined) return (point) => [point];
  const { pointOf } = model.compile({ life, condition, line: "actual" });
  const nodeOf = (point: string) => pointOf(point) ?? point;
  return (point) => [...new Set([point, ...[...model.points.keys()].filter((other) => nodeOf(other) === nodeOf(point))])];
}

function pathThrough({ part, state }: Placed, tube: Placed | undefined, gridPoints: ReadonlySet<string>): GridPath[] {
  const ends = endsOf(state);
  const gridSide = ends?.find((point) => gridPoints.has(point));
  const source = ends?.find((point) => !gridPoints.has(point));
  return gridSide === undefined || source === undefined
    ? []
    : [{ tube, capacitor: part, capacitorState: state, gridSide, source, gridPoints }];
}
