/** Parts of a spreadsheet's formula, each with what it comes to, so that a cell's formula and the result kept beside it are one. */

export interface Term {
  /** As it stands in a formula, without the equals sign. */
  readonly text: string;
  readonly value: number;
}

export const number = (value: number): Term => ({ text: String(value), value });

/** `a*b*…`; sums and differences among them stand in brackets of their own. */
export function times(...terms: readonly Term[]): Term {
  return {
    text: terms.map(({ text }) => text).join('*'),
    value: terms.reduce((product, { value }) => product * value, 1),
  };
}

/** `(a-b-…)`. */
export function less(first: Term, ...others: readonly Term[]): Term {
  return {
    text: `(${[first, ...others].map(({ text }) => text).join('-')})`,
    value: others.reduce((rest, { value }) => rest - value, first.value),
  };
}

/** `(a+b)`. */
export function plus(first: Term, second: Term): Term {
  return { text: `(${first.text}+${second.text})`, value: first.value + second.value };
}

export const atLeastZero = ({ text, value }: Term): Term => ({ text: `MAX(0,${text})`, value: Math.max(0, value) });

/** `a/b`, and 0 where b is 0. */
export function over(part: Term, whole: Term): Term {
  return {
    text: `IF(${whole.text}=0,0,${part.text}/${whole.text})`,
    value: whole.value === 0 ? 0 : part.value / whole.value,
  };
}

/** Of the cells of a range, empty ones among them left out. */
export function sumOf(range: string, values: readonly number[]): Term {
  return { text: `SUM(${range})`, value: values.reduce((sum, value) => sum + value, 0) };
}

export function greatestOf(range: string, values: readonly number[]): Term {
  return { text: `MAX(${range})`, value: Math.max(0, ...values) };
}

/** Each of the first times its own of the second, added up. */
export function sumOfProducts(first: Cells, second: Cells): Term {
  return {
    text: `SUMPRODUCT(${first.range},${second.range})`,
    value: first.values.reduce((sum, value, at) => sum + value * (second.values[at] as number), 0),
  };
}

export interface Cells {
  readonly range: string;
  readonly values: readonly number[];
}
