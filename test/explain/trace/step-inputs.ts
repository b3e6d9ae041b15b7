/** Reads a step's inputs by label, as a person with a calculator would. */
import type { TraceStep } from '../../../src/explain/trace/trace-step.ts';

export interface StepInputs {
  readonly step: TraceStep;
  /** The number under a label; fails where there is none. */
  num(label: string): number;
  /** The number under a label, or else another. */
  numOr(label: string, other: number): number;
  word(label: string): string | undefined;
  has(label: string): boolean;
  /** All numbers, in order. */
  numbers(): readonly number[];
  /** Number by the rest of the label, of labels that end so: `Monday` of `Monday, ETc`. */
  ending(end: string): ReadonlyMap<string, number>;
  /** Number by the rest of the label, of labels that start so. */
  starting(start: string): ReadonlyMap<string, number>;
}

export function inputsOf(step: TraceStep): StepInputs {
  const byLabel = new Map(step.inputs.map(({ label, value }) => [label, value]));
  if (byLabel.size !== step.inputs.length) throw new Error(`${step.id} has two inputs of one label`);
  const numbers = [...byLabel].filter((entry): entry is [string, number] => typeof entry[1] === 'number');
  const numOr = (label: string, other: number) => {
    const value = byLabel.get(label);
    return typeof value === 'number' ? value : other;
  };
  return {
    step,
    numOr,
    num: (label) => {
      const value = byLabel.get(label);
      if (typeof value !== 'number') throw new Error(`${step.id} has no number “${label}”`);
      return value;
    },
    word: (label) => {
      const value = byLabel.get(label);
      return typeof value === 'string' ? value : undefined;
    },
    has: (label) => byLabel.has(label),
    numbers: () => numbers.map(([, value]) => value),
    ending: (end) =>
      new Map(
        numbers.filter(([label]) => label.endsWith(end)).map(([label, value]) => [label.slice(0, -end.length), value]),
      ),
    starting: (start) =>
      new Map(
        numbers
          .filter(([label]) => label.startsWith(start))
          .map(([label, value]) => [label.slice(start.length), value]),
      ),
  };
}

export type Formula = (given: StepInputs) => number | string;
export type Formulas = Readonly<Record<string, Formula>>;

export const total = (numbers: Iterable<number>): number => [...numbers].reduce((sum, number) => sum + number, 0);
