/** Reads a step's inputs by the ids of their labels, as a person with a calculator would by the labels. */
import type { LabelKinds } from '../../../src/explain/trace/label-kinds.ts';
import type { StepId } from '../../../src/explain/trace/step-kinds.ts';
import type { TraceLabel, TraceStep, TraceValue } from '../../../src/explain/trace/trace-step.ts';

export type LabelId = keyof LabelKinds;

/** What labels of one id are told apart by. */
export type About = 'day' | 'month' | 'line' | 'name' | 'openDays' | 'part' | 'times';

export interface StepInputs {
  readonly step: TraceStep;
  /** Empty where the step has one formula. */
  readonly variant: string;
  /** The only number with a label of this id; fails where there is none, or more. */
  num(id: LabelId): number;
  /** The same, or else another where there is none. */
  numOr(id: LabelId, other: number): number;
  /** The only value of this id that is a code. */
  code(id: LabelId): string | undefined;
  has(id: LabelId): boolean;
  /** All numbers, in order. */
  numbers(): readonly number[];
  /** All numbers of this id by what their labels name: the day of `{ id: 'day-eto', day }`. */
  by(id: LabelId, about: About): ReadonlyMap<unknown, number>;
  /** Numbers of this id by the day and the part of the ground that their labels name: `19723 wetted`. */
  byDayAndPart(id: LabelId): ReadonlyMap<string, number>;
  /** Days of one week. */
  days(id: LabelId): readonly number[];
}

export function inputsOf(step: TraceStep): StepInputs {
  const byId = groupedById(step);
  const of = (id: LabelId): readonly TraceValue[] => byId.get(id) ?? [];
  const only = (id: LabelId): TraceValue['value'] | undefined => {
    const [first, ...others] = of(id);
    if (others.length > 0) throw new Error(`${step.id} has several inputs “${id}”`);
    return first?.value;
  };
  const numOr = (id: LabelId, other: number) => {
    const value = only(id);
    return typeof value === 'number' ? value : other;
  };
  return {
    step,
    variant: 'variant' in step ? step.variant : '',
    numOr,
    num: (id) => {
      const value = only(id);
      if (typeof value !== 'number') throw new Error(`${step.id} has no number “${id}”`);
      return value;
    },
    code: (id) => {
      const value = only(id);
      return typeof value === 'string' ? value : undefined;
    },
    has: (id) => byId.has(id),
    numbers: () => step.inputs.map(({ value }) => value).filter((value) => typeof value === 'number'),
    by: (id, about) => {
      const numbers = of(id).filter(({ value }) => typeof value === 'number');
      const named = new Map(numbers.map(({ label, value }) => [aboutOf(label, about), Number(value)]));
      if (named.size !== numbers.length) throw new Error(`${step.id} has two inputs “${id}” of one ${about}`);
      return named;
    },
    byDayAndPart: (id) =>
      new Map(of(id).map(({ label, value }) => [`${aboutOf(label, 'day')} ${aboutOf(label, 'part')}`, Number(value)])),
    days: (id) => of(id).flatMap((input) => ('unit' in input && input.unit === 'weekdays' ? input.value : [])),
  };
}

/** A line that gives another flow from a day of the week on is told apart by that day too. */
function aboutOf(label: TraceLabel, about: About): unknown {
  const named = label as Partial<Record<About, unknown>> & { readonly from?: number };
  return about === 'line' && named.from !== undefined ? (Number(named.line) || 1) + named.from / 1e6 : named[about];
}

function groupedById({ inputs }: TraceStep): ReadonlyMap<string, readonly TraceValue[]> {
  const byId = new Map<string, TraceValue[]>();
  for (const input of inputs) {
    const all = byId.get(input.label.id);
    if (all === undefined) byId.set(input.label.id, [input]);
    else all.push(input);
  }
  return byId;
}

export type Formula = (given: StepInputs) => number | string | readonly number[];
export type Formulas = Readonly<Partial<Record<StepId, Formula>>>;

export const total = (numbers: Iterable<number>): number => [...numbers].reduce((sum, number) => sum + number, 0);
