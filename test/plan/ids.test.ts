import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { newId, newPlantingId, newZoneId } from '../../src/plan/ids.ts';
import { id } from '../../src/plan/schema/text.ts';
import { mixedGarden } from '../support/small-plans.ts';

describe('a new id', () => {
  it.each([
    ['Raised beds', 'raised-beds'],
    ['  Beds & borders (2) ', 'beds-borders-2'],
    ['Señor Peña’s Äpfel', 'senor-pena-s-apfel'],
    ['花壇', 'zone'],
    ['Constructor', 'zone'],
    ['', 'zone'],
  ])('of “%s” is %s', (name, expected) => {
    expect(newId(name, new Set(), 'zone')).toBe(expected);
  });

  it('is not one that is taken', () => {
    expect(newId('Beds', new Set(['beds', 'beds-2']), 'zone')).toBe('beds-3');
    expect(newZoneId(mixedGarden(), 'Beds')).toBe('beds-2');
    expect(newPlantingId(mixedGarden(), 'Tomatoes')).toBe('tomatoes-2');
    expect(newPlantingId(mixedGarden(), 'Beds')).toBe('beds');
  });

  it('is an id that a plan can hold, whatever the name', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 200 }),
        fc.array(fc.constantFrom('a', 'zone', 'zone-2')),
        (name, taken) => {
          const made = newId(name, new Set(taken), 'zone');
          expect(v.is(id, made)).toBe(true);
          expect(taken).not.toContain(made);
        },
      ),
    );
  });
});
