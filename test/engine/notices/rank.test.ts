import { expect, it } from 'vitest';
import type { Notice } from '../../../src/engine/notices/notice.ts';
import { ranked } from '../../../src/engine/notices/rank.ts';

const notice = (change: Partial<Notice>): Notice => ({
  kind: 'short',
  severity: 'warning',
  remedy: 'water-more',
  figures: {},
  ...change,
});

it('puts severity before kind, kind before litres, litres before the garden’s order', () => {
  const note = notice({ severity: 'note', kind: 'no-line' });
  const little = notice({ figures: { unmetLitres: 1 }, zoneId: 'first' });
  const much = notice({ figures: { unmetLitres: 9 } });
  const alsoLittle = notice({ figures: { unmetLitres: 1 }, zoneId: 'second' });
  const closed = notice({ kind: 'closed' });
  const danger = notice({ severity: 'danger', kind: 'dry' });
  expect(ranked([note, little, much, alsoLittle, closed, danger])).toEqual([
    danger,
    closed,
    much,
    little,
    alsoLittle,
    note,
  ]);
});

it('counts the need, or else what drained, where nothing went unmet', () => {
  const unmet = notice({ figures: { unmetLitres: 3, neededLitres: 50 } });
  const needed = notice({ figures: { unmetLitres: 0, neededLitres: 5 } });
  const drained = notice({ figures: { drainedLitres: 4 } });
  expect(ranked([unmet, drained, needed])).toEqual([needed, drained, unmet]);
});

it('leaves the list it was given as it was', () => {
  const given = Object.freeze([notice({ severity: 'note' }), notice({ severity: 'danger' })]);
  expect(ranked(given).map(({ severity }) => severity)).toEqual(['danger', 'note']);
  expect(given[0]?.severity).toBe('note');
});
