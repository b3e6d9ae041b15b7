import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MOST_CHARACTERS, readPlan } from '../../../src/plan/reading/read-plan.ts';
import { writePlan } from '../../../src/plan/reading/write-plan.ts';
import { metricGarden, mixedGarden, oneBed } from '../../support/small-plans.ts';

/** Faults as `where | value | expected`. */
function faultsIn(text: string): string[] {
  const result = readPlan(text);
  return result.ok ? [] : result.faults.map(({ where, value, expected }) => `${where} | ${value} | ${expected}`);
}

describe('a plan file that is whole', () => {
  it.each([
    ['one bed', oneBed()],
    ['a mixed garden', mixedGarden()],
    ['a metric garden', metricGarden()],
  ])('is read: %s', (_name, plan) => {
    expect(readPlan(writePlan(plan))).toEqual({ ok: true, plan });
  });

  it('may begin with a byte order mark', () => {
    expect(readPlan(`\uFEFF${writePlan(oneBed())}`)).toMatchObject({ ok: true });
  });
});

describe('a text that is no JSON says where and what to do', () => {
  it.each([
    ['a comma too many', '{"a": 1,}', 'line 1, column 9 | “}” | no comma before a closing bracket: take it out'],
    [
      'a comma missing',
      '{\n  "a": 1\n  "b": 2\n}',
      'line 3, column 3 | “"” | a comma (,) before the next field, or a closing }',
    ],
    [
      'a comma missing in a list',
      '[1 2]',
      'line 1, column 4 | “2” | a comma (,) before the next entry, or a closing ]',
    ],
    ['single quotes', "{'a': 1}", 'line 1, column 2 | “\'” | plain double quotes (") around a text'],
    ['curly quotes', '{“a”: 1}', 'line 1, column 2 | ““” | plain double quotes (") around a text'],
    ['a name without quotes', '{a: 1}', 'line 1, column 2 | “a” | the name of a field in "double quotes"'],
    ['a colon missing', '{"a" 1}', 'line 1, column 6 | “1” | a colon (:) between a field’s name and its value'],
    ['a comment', '{"a": 1} // mine', 'line 1, column 10 | “/” | nothing after the last bracket of the plan'],
    ['a comment inside', '{ // mine\n"a": 1}', 'line 1, column 3 | “/” | no comment: take it out'],
    [
      'a number in words',
      '{"a": NaN}',
      'line 1, column 7 | “N” | a value: a number, a text in "double quotes", a list or a group',
    ],
    ['a number that begins with 0', '{"a": 012}', 'line 1, column 7 | “0” | a number that does not begin with 0'],
    ['a decimal comma', '{"a": 1,5}', 'line 1, column 9 | “5” | the name of a field in "double quotes"'],
    [
      'a line break in a text',
      '{"a": "b\nc"}',
      'line 1, column 9 | a line break | a closing quote (") on the same line',
    ],
    [
      'a file cut short',
      '{"a": [1, 2',
      'line 1, column 12 | the end of the file | the rest of the plan: the file was not saved or copied whole',
    ],
    ['a web page', '<!doctype html>', 'line 1, column 1 | “<” | a plan file: this looks like a web page'],
  ])('%s', (_name, text, words) => {
    expect(faultsIn(text)).toEqual([`The file, ${words}`]);
  });

  it('an empty file', () => {
    expect(faultsIn(' \n')).toEqual(['The file | an empty file | a plan']);
  });
});

describe('a text that is JSON and no plan', () => {
  it.each([
    ['null', 'null'],
    ['a list', '[1, 2]'],
    ['a number', '7'],
    ['a text', '"runnel-plan"'],
  ])('%s', (_name, text) => {
    expect(faultsIn(text)).toHaveLength(1);
    expect(faultsIn(text)[0]).toMatch(/^The plan \| .* \| a plan: one group of fields$/);
  });

  it('another program’s file is told apart by its format, and every missing part is named', () => {
    expect(faultsIn('{"name": "x"}')).toEqual([
      'The plan: format | nothing | the word runnel-plan',
      'The plan: version | nothing | the number 1',
      'The plan: unit system | nothing | us or metric',
      'Season | nothing | a season',
      'Site | nothing | a site',
      'The plan: zones | nothing | a list of zones',
    ]);
  });
});

describe('a hostile file ends in faults, never in a throw', () => {
  const withName = (name: string) => writePlan(oneBed()).replace('"One bed"', name);

  it.each([
    ['200,000 brackets', '['.repeat(200_000)],
    ['200,000 nested lists', '['.repeat(200_000) + ']'.repeat(200_000)],
    ['200,000 nested groups', `${'{"a":'.repeat(200_000)}1${'}'.repeat(200_000)}`],
    ['a name of a million characters', withName(JSON.stringify('x'.repeat(1_000_000)))],
    ['a number beyond all numbers', writePlan(oneBed()).replace('"area": 120', '"area": 1e999')],
    ['a group in place of a name', withName('{"toString": 1}')],
    ['a list in place of a name', withName('[[[]]]')],
  ])('%s', (_name, text) => {
    const faults = faultsIn(text);
    expect(faults).toHaveLength(1);
    expect(faults[0]?.length).toBeLessThan(300);
  });

  it('a text that is too long to look at', () => {
    expect(faultsIn(' '.repeat(MOST_CHARACTERS + 1))).toEqual([
      'The file | 30000001 characters | at most 30000000 characters',
    ]);
  });

  it.each(['__proto__', 'constructor', 'prototype'])('a field called %s, wherever it stands', (key) => {
    const field = `"${key}": {"polluted": true}`;
    const places = [
      withName(`"x", ${field}`),
      writePlan(oneBed()).replace('"latitude"', `${field}, "latitude"`),
      withName(`"x", "choices": {${field}}`),
      withName(`"x", "choices": {"beds": {${field}}}`),
      withName(`"x", "log": {"days": {${field}}}`),
    ];
    for (const text of places) {
      const result = readPlan(text);
      expect(result.ok ? [] : result.faults.map(({ expected }) => expected)).toContain('another name');
    }
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });

  it('any text at all', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary', maxLength: 200 }), fc.json()), (text) => {
        const result = readPlan(text);
        expect(result.ok).toBe(false);
        expect(result.ok ? 0 : result.faults.length).toBeGreaterThan(0);
      }),
      { numRuns: 100 },
    );
  });

  it('a plan with any character changed, cut or doubled', () => {
    const text = writePlan(mixedGarden());
    const spoiled = fc
      .tuple(fc.nat(text.length - 1), fc.nat(3), fc.constantFrom('"', '{', ']', ',', '0', '-', '\\', '\u0000'))
      .map(([at, length, put]) => text.slice(0, at) + put + text.slice(at + length));
    fc.assert(
      fc.property(spoiled, (broken) => {
        const result = readPlan(broken);
        if (!result.ok)
          expect(result.faults.every(({ where, expected }) => where !== '' && expected !== '')).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});
