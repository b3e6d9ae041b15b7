/** Figures of a step, each kind with its quantity, its unit or its list of codes, and what labels them. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { LabelKinds } from './label-kinds.ts';
import type { TraceCodes } from './trace-codes.ts';
import type { CodedFigure, OneOf, TraceFigure, TraceLabel, TraceValue } from './trace-step.ts';

/** Labels that name nothing besides: their id is enough. */
type PlainLabel = { [Id in keyof LabelKinds]: object extends LabelKinds[Id] ? Id : never }[keyof LabelKinds];

export function input(label: TraceLabel | PlainLabel, figure: TraceFigure): TraceValue {
  const id: TraceLabel = typeof label === 'string' ? plain(label) : label;
  return { label: id, ...figure };
}

const plain = <Id extends PlainLabel>(id: Id): OneOf<LabelKinds> => ({ id }) as OneOf<LabelKinds>;

/** mm. */
export const depth = (value: number): TraceFigure => ({ value, quantity: 'depth' });

/** mm/h. */
export const rate = (value: number): TraceFigure => ({ value, quantity: 'rate' });

/** L. */
export const volume = (value: number): TraceFigure => ({ value, quantity: 'volume' });

/** L/min. */
export const flow = (value: number): TraceFigure => ({ value, quantity: 'supplyFlow' });

/** m2. */
export const area = (value: number): TraceFigure => ({ value, quantity: 'area' });

/** kPa. */
export const pressure = (value: number): TraceFigure => ({ value, quantity: 'pressure' });

/** m. */
export const length = (value: number): TraceFigure => ({ value, quantity: 'length' });

/** m. */
export const rootDepth = (value: number): TraceFigure => ({ value, quantity: 'rootDepth' });

/** L/h. */
export const emitterFlow = (value: number): TraceFigure => ({ value, quantity: 'emitterFlow' });

/** mm. */
export const bore = (value: number): TraceFigure => ({ value, quantity: 'bore' });

/** °C. */
export const temperature = (value: number): TraceFigure => ({ value, quantity: 'temperature' });

export const minutes = (value: number): TraceFigure => ({ value, unit: 'minutes', digits: 1 });

export const days = (value: number): TraceFigure => ({ value, unit: 'days', digits: 0 });

/** A bare whole number. */
export const count = (value: number): TraceFigure => ({ value, digits: 0 });

/** A number without unit: a coefficient, a factor. */
export const factor = (value: number): TraceFigure => ({ value, digits: 3 });

/** A share of 1, shown as a percentage. */
export const share = (value: number): TraceFigure => ({ value, unit: 'share', digits: 0 });

export const date = (value: DayNumber): TraceFigure => ({ value, unit: 'date', digits: 0 });

/** Days of one week. */
export const weekdays = (value: readonly DayNumber[]): TraceFigure => ({ value, unit: 'weekdays' });

/** One code of a list, or several. */
export function code<List extends keyof TraceCodes>(
  codes: List,
  value: TraceCodes[List] | readonly TraceCodes[List][],
): TraceFigure {
  return { codes, value } as CodedFigure;
}
