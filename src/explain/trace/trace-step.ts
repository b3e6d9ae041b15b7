/** One step of the answer to "why is this number so?", ready to be described in words and to be worked again by hand. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { Quantity } from '../../engine/units.ts';
import type { LabelKinds } from './label-kinds.ts';
import type { SourceNotes } from './source-notes.ts';
import type { StepKinds } from './step-kinds.ts';
import type { TraceCodes } from './trace-codes.ts';

/** A row of a table of kinds: its id, and what it is about. */
export type OneOf<Kinds, Id extends keyof Kinds = keyof Kinds> = {
  readonly [Key in Id]: { readonly id: Key } & Kinds[Key];
}[Id];

/** What a value is: `{ id: 'raw', day: 20_000 }`. */
export type TraceLabel = OneOf<LabelKinds>;

/** Units that are the same in every unit system; `share` is a share of 1, `date` a day of the calendar. */
export type TraceUnit = 'minutes' | 'days' | 'share' | 'date' | 'kPa' | 'MJ/m²/d';

/** A figure of a step. */
export type TraceFigure =
  /** In the engine's unit for the quantity, by which a view shows it in the plan's unit. */
  | { readonly value: number; readonly quantity: Quantity }
  /** Without a unit where that is left out; `digits` are the decimals that are worth showing. */
  | { readonly value: number; readonly unit?: TraceUnit; readonly digits: number }
  /** Days of one week. */
  | { readonly value: readonly DayNumber[]; readonly unit: 'weekdays' }
  | CodedFigure;

/** What is no number: one code, or several, of a list of codes. */
export type CodedFigure = {
  readonly [List in keyof TraceCodes]: {
    readonly value: TraceCodes[List] | readonly TraceCodes[List][];
    readonly codes: List;
  };
}[keyof TraceCodes];

export type TraceValue = TraceFigure & { readonly label: TraceLabel };

/** A publication, as every language cites it, or a note that a language puts in words. */
export type TraceSource = string | OneOf<SourceNotes>;

/** The kind of step with what tells it from others of its kind in one trace, and how its result follows from its inputs. */
export type TraceStep = OneOf<StepKinds> & {
  /** Where the formula comes from, with its equation number; a choice of Runnel's own is said to be one. */
  readonly source: readonly TraceSource[];
  readonly inputs: readonly TraceValue[];
  readonly result: TraceFigure;
};
