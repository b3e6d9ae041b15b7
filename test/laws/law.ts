/** How a law is tried: on so many random inputs, the same ones every time. */
import fc from 'fast-check';
import { it } from 'vitest';
import { RANDOM_SEED } from '../tools/random-seed.ts';

export interface Law<Input> {
  readonly on: fc.Arbitrary<Input>;
  readonly runs: number;
  /** Throws where the law is broken. */
  readonly holds: (input: Input) => void;
}

/** Inputs that several laws look at, where to make them costs more than to look. */
export function sampled<Input>(on: fc.Arbitrary<Input>, runs: number): readonly Input[] {
  return fc.sample(on, { numRuns: runs, seed: RANDOM_SEED });
}

/** What several laws look at, made when the first of them asks for it. */
export function once<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

export function law<Input>(words: string, { on, runs, holds }: Law<Input>): void {
  it(words, { timeout: 120_000 }, () => {
    fc.assert(fc.property(on, holds), { numRuns: runs, seed: RANDOM_SEED });
  });
}
