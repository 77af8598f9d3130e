import {
  linesOverPlane,
  planeOf,
  type Compiled,
  type Plane,
  type PlaneAsked,
  type PlaneLine,
} from '../../../../src/index.ts';

/** A plane and the lines that can be drawn over it: plain data, for a worker to post. */
export interface PlaneHere {
  readonly plane: Plane;
  readonly lines: readonly PlaneLine[];
}

export const planeHere = (compiled: Compiled, asked: PlaneAsked): PlaneHere => ({
  plane: planeOf(compiled, asked),
  lines: linesOverPlane(compiled, asked),
});
