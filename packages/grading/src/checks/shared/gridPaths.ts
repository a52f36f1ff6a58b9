import type { ChassisModel, Life, Part, PartState } from "../../model/index.ts";
import { allIn, endsOf } from "./layout.ts";

/** A capacitor through which direct current could reach a grid. */
export interface GridPath {
  tube: Part;
  tubeState: PartState;
  capacitor: Part;
  capacitorState: PartState;
  /** Its end on the grid's side, and on the other. */
  gridSide: string;
  source: string;
  /** Points at the grid's own potential while no grid current flows: the grid and what stoppers join to it. */
  gridPoints: ReadonlySet<string>;
}

/** Every capacitor between a tube's grid (stoppers included) and another point. */
export function gridPaths(model: ChassisModel, life: Life): GridPath[] {
  const stoppers = allIn(model, life, "resistor").filter(({ part }) => part.duty === "stopper");
  const capacitors = allIn(model, life, "capacitor");
  return allIn(model, life, "tube").flatMap(({ part: tube, state: tubeState }) => {
    const grid = tubeState.pins.grid;
    if (grid === undefined || grid === model.reference) return [];
    const gridPoints = new Set([grid]);
    for (const { part, state } of stoppers) {
      const ends = endsOf(state);
      // A screen or plate stopper does not touch the grid.
      if (ends?.includes(grid) === true && part.duty === "stopper") for (const point of ends) gridPoints.add(point);
    }
    gridPoints.delete(model.reference);
    return capacitors.flatMap(({ part: capacitor, state: capacitorState }): GridPath[] => {
      const ends = endsOf(capacitorState);
      const gridSide = ends?.find((point) => gridPoints.has(point));
      const source = ends?.find((point) => !gridPoints.has(point));
      return gridSide === undefined || source === undefined
        ? []
        : [{ tube, tubeState, capacitor, capacitorState, gridSide, source, gridPoints }];
    });
  });
}
