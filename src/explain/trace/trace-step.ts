/** One step of the answer to "why is this number so?", ready to be read and to be worked again by hand. */
import type { Quantity } from '../../engine/units.ts';

export interface TraceValue {
  readonly label: string;
  /** In the engine's unit where `quantity` is given; a word where there is no number. */
  readonly value: number | string;
  /** Kind of quantity, by which a view shows the value in the plan's unit. */
  readonly quantity?: Quantity;
  /** Unit of a number that is the same in every unit system: `minutes`, `days`, `%`. */
  readonly unit?: string;
  /** Decimals that are worth showing of a number without a quantity; left to the view where absent. */
  readonly digits?: number;
}

export interface TraceStep {
  /** Kind of step, one of a kind within a trace; `application-rate` may be the anchor of a link. */
  readonly id: string;
  readonly title: string;
  /** One plain sentence for a gardener; no number in it needs a unit. */
  readonly says: string;
  /** How the result follows from the inputs, in the words and symbols of the inputs' labels. */
  readonly formula: string;
  /** Where the formula comes from, with its equation number; a choice of this kit is said to be one. */
  readonly source: string;
  readonly inputs: readonly TraceValue[];
  readonly result: TraceValue;
}
