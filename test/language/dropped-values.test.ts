import { describe, expect, it } from 'vitest';
import type { Format } from '../../src/language/format/format.ts';
import { allWords } from './all-words.ts';
import { droppedValues, needingSamples } from './dropped-values.ts';
import { SAMPLES } from './message-samples.ts';

describe('a value that a message drops', () => {
  const english = {
    short: ({ quantity, day }: Format, litres: number, from: number) =>
      `Short by ${quantity(litres, 'volume')} from ${day(from)}`,
    zones: ({ list }: Format, names: readonly string[]) => `Run ${list(names)}`,
    line: {
      spans: (_: Format, { first, last }: { readonly first: number; readonly last: number }) => `${first} to ${last}`,
    },
    title: 'Water',
    of: (kind: 'rain' | 'tank') => ({ rain: 'Rain', tank: 'Tank' })[kind],
  };

  it('is found by its message and place', () => {
    const other = {
      ...english,
      short: ({ quantity }: Format, litres: number) => `Faltan ${quantity(litres, 'volume')}`,
      zones: (_: Format, names: readonly string[]) => `Riegue ${names[0]}`,
      line: { spans: (_: Format, { last }: { readonly last: number }) => `hasta ${last}` },
      of: () => 'Agua',
    };
    expect(droppedValues(english, other, { of: [['rain'], ['tank']] })).toEqual([
      { message: 'short', value: '2' },
      { message: 'zones', value: '1.1' },
      { message: 'line.spans', value: '1.first' },
      { message: 'of', value: 'code' },
    ]);
  });

  it('is none where the other language says it elsewhere in the sentence', () => {
    const other = {
      ...english,
      short: ({ quantity, day }: Format, litres: number, from: number) =>
        `Desde ${day(from)} faltan ${quantity(litres, 'volume')}`,
    };
    expect(droppedValues(english, other)).toEqual([]);
  });
});

describe('the messages of English', () => {
  it('show the values that they are given, so that another language can be held to it', () => {
    expect(needingSamples(allWords, SAMPLES)).toEqual([]);
  });

  it('have no samples that no message needs', () => {
    const needed = needingSamples(allWords, {});
    expect(Object.keys(SAMPLES).filter((path) => !needed.includes(path))).toEqual([]);
  });
});
