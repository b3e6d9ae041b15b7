import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonFault } from '../../../src/plan/reading/json-fault.ts';

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

describe('jsonFault agrees with the JavaScript engine’s own reader', () => {
  it('finds nothing in JSON', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.constantFrom(undefined, 2, '\t'), (value, space) => {
        expect(jsonFault(JSON.stringify(value, undefined, space))).toBeUndefined();
      }),
      { numRuns: 500 },
    );
  });

  it('finds a fault in exactly the texts that are none', () => {
    const pieces = [
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"a"',
      '"',
      '1',
      '-',
      '0',
      '.5',
      'e3',
      'E+',
      'true',
      'nul',
      '\\',
      ' ',
      '\n',
      '\\u00',
    ];
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...pieces), { maxLength: 8 }), (parts) => {
        const text = parts.join('');
        expect([text, jsonFault(text) === undefined]).toEqual([text, isJson(text)]);
      }),
      { numRuns: 4000 },
    );
  });

  it('points at a place inside the text or at its end', () => {
    fc.assert(
      fc.property(fc.json(), fc.nat(), (json, seed) => {
        const cut = json.slice(0, seed % json.length);
        const fault = jsonFault(cut);
        fc.pre(fault !== undefined);
        const line = cut.split('\n')[(fault?.line ?? 0) - 1];
        expect(line).toBeDefined();
        expect(fault?.column).toBeGreaterThanOrEqual(1);
        expect(fault?.column).toBeLessThanOrEqual((line?.length ?? 0) + 1);
      }),
      { numRuns: 300 },
    );
  });
});
