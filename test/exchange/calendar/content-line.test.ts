/** Against RFC 5545, 3.1 (content lines), 3.3.11 (text) and 3.3.5 (date-time). */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contentLine, instantValue, textValue } from '../../../src/exchange/calendar/content-line.ts';

const octets = (text: string) => new TextEncoder().encode(text).length;

describe('a line of a calendar file', () => {
  it('has at most 75 octets, parts no character, and unfolds to what it was', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 400 }), (text) => {
        const value = textValue(text);
        const written = contentLine('SUMMARY', value);
        const lines = written.split('\r\n');
        expect(lines.pop()).toBe('');
        for (const line of lines) {
          expect(octets(line)).toBeLessThanOrEqual(75);
          expect(/\p{Cs}/u.test(line)).toBe(false);
        }
        expect(written.replaceAll('\r\n ', '')).toBe(`SUMMARY:${value}\r\n`);
      }),
    );
  });

  it('is full before it is folded', () => {
    expect(contentLine('NOTE', 'x'.repeat(70))).toBe(`NOTE:${'x'.repeat(70)}\r\n`);
    expect(contentLine('NOTE', 'x'.repeat(71))).toBe(`NOTE:${'x'.repeat(70)}\r\n x\r\n`);
    expect(contentLine('NOTE', '\u{1f33b}'.repeat(18)).split('\r\n').map(octets)).toEqual([73, 5, 0]);
  });

  it('escapes what would end or part a value, and holds no control', () => {
    expect(textValue('a\\b; c, d\r\ne\rf\u2028g\u0000h\ti')).toBe('a\\\\b\\; c\\, d\\ne\\nf\\ngh\ti');
  });

  it('writes instants in UTC, to the second', () => {
    expect(instantValue(Date.UTC(2027, 5, 1, 5, 0, 0, 400))).toBe('20270601T050000Z');
    expect(instantValue(Date.UTC(2027, 11, 31, 23, 59, 59, 600))).toBe('20280101T000000Z');
  });
});
