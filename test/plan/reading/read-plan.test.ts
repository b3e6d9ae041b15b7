import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { describeFault } from '../../../src/language/describe-fault.ts';
import { readerFor } from '../../../src/language/reader.ts';
import type { Fault } from '../../../src/plan/reading/fault.ts';
import type { JsonToken } from '../../../src/plan/reading/json-tokens.ts';
import { MOST_CHARACTERS, readPlan } from '../../../src/plan/reading/read-plan.ts';
import { writePlan } from '../../../src/plan/reading/write-plan.ts';
import { metricGarden, mixedGarden, oneBed } from '../../support/small-plans.ts';

function faultsIn(text: string): readonly Fault[] {
  const result = readPlan(text);
  return result.ok ? [] : result.faults;
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

describe('a text that is no JSON: where, what stands there, and what should', () => {
  it.each<[string, string, [number, number, string | undefined, JsonToken]]>([
    ['a comma too many', '{"a": 1,}', [1, 9, '}', 'no-comma']],
    ['a comma missing', '{\n  "a": 1\n  "b": 2\n}', [3, 3, '"', 'comma-or-brace']],
    ['a comma missing in a list', '[1 2]', [1, 4, '2', 'comma-or-bracket']],
    ['single quotes', "{'a': 1}", [1, 2, "'", 'plain-quotes']],
    ['curly quotes', '{“a”: 1}', [1, 2, '“', 'plain-quotes']],
    ['a name without quotes', '{a: 1}', [1, 2, 'a', 'field-name']],
    ['a colon missing', '{"a" 1}', [1, 6, '1', 'colon']],
    ['a comment', '{"a": 1} // mine', [1, 10, '/', 'nothing-more']],
    ['a comment inside', '{ // mine\n"a": 1}', [1, 3, '/', 'no-comment']],
    ['a number in words', '{"a": NaN}', [1, 7, 'N', 'value']],
    ['a number that begins with 0', '{"a": 012}', [1, 7, '0', 'no-leading-zero']],
    ['a decimal comma', '{"a": 1,5}', [1, 9, '5', 'field-name']],
    ['a line break in a text', '{"a": "b\nc"}', [1, 9, '\n', 'closing-quote-on-line']],
    ['a file cut short', '{"a": [1, 2', [1, 12, undefined, 'rest']],
    ['a web page', '<!doctype html>', [1, 1, '<', 'plan-file']],
  ])('%s', (_name, text, [line, column, found, expected]) => {
    const place = { part: 'file', fields: [], line, column };
    expect(faultsIn(text)).toEqual([{ path: '', code: 'not-json', values: { expected, place, found } }]);
  });

  it('an empty file', () => {
    expect(faultsIn(' \n')).toMatchObject([{ path: '', code: 'empty-file' }]);
  });
});

describe('a text that is JSON and no plan', () => {
  it.each([
    ['null', 'null'],
    ['a list', '[1, 2]'],
    ['a number', '7'],
    ['a text', '"runnel-plan"'],
  ])('%s', (_name, text) => {
    expect(faultsIn(text)).toMatchObject([{ path: '', code: 'not-a-plan' }]);
  });

  it('another program’s file is told apart by its format, and every missing part is named', () => {
    expect(faultsIn('{"name": "x"}')).toMatchObject([
      { path: 'format', code: 'choice', values: { options: ['runnel-plan'] } },
      { path: 'version', code: 'choice', values: { options: ['2'] } },
      { path: 'units', code: 'choice', values: { options: ['us', 'metric'] } },
      { path: 'season', code: 'fields', values: { known: ['firstDay', 'weeks'] } },
      { path: 'site', code: 'fields' },
      { path: 'zones', code: 'list' },
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
    expect(JSON.stringify(faults[0]).length).toBeLessThan(500);
  });

  it('a text that is too long to look at', () => {
    expect(faultsIn(' '.repeat(MOST_CHARACTERS + 1))).toMatchObject([
      { path: '', code: 'too-long', values: { most: MOST_CHARACTERS, found: MOST_CHARACTERS + 1 } },
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
      expect(result.ok ? [] : result.faults.map(({ code }) => code)).toContain('reserved-name');
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
        for (const fault of result.ok ? [] : result.faults) {
          const words = Object.values(describeFault(fault, readerFor('en-US', 'us')));
          expect(words.every((text) => text !== '' && !/undefined|NaN|\[object/.test(text))).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });
});
