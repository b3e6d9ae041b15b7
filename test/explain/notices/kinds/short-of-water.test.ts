import { describe, expect, it } from 'vitest';
import { runSeason } from '../../../../src/engine/season/run-season.ts';
import { noticesOf } from '../../../../src/explain/notices/notices-of.ts';
import { computeSeason } from '../../../../src/plan/compute-season.ts';
import { plainGarden, plainPlanting, plainZone, thirsty } from '../../../support/plain-garden.ts';
import { mixedGarden, oneBed } from '../../../support/small-plans.ts';

describe('a planting that asks for more than its zone gives', () => {
  it('is told so for every week but that in which its open days are set by hand, which can be given back', () => {
    const hungry = thirsty(0.9, { id: 'hungry', hasShutOff: true });
    const zone = plainZone({
      plantings: [plainPlanting(), hungry],
      rule: { kind: 'planting', plantingId: 'bed' },
      choices: new Map([[3, { openDays: new Map([['hungry', 1]]) }]]),
    });
    const notices = noticesOf(runSeason(plainGarden([zone]))).filter(({ plantingId }) => plantingId === 'hungry');
    const told = notices.map(({ kind, remedy, weeks }) => ({ kind, remedy, weeks }));
    expect(told).toContainEqual({ kind: 'shut-off-short', remedy: 'change-line', weeks: [0, 1, 2, 4, 5, 6, 7, 8, 9] });
    expect(told).toContainEqual({ kind: 'short-by-hand', remedy: 'use-computed', weeks: [3] });
  });
});

describe('a planting whose water others decide on', () => {
  const kindsOf = (plan: Parameters<typeof computeSeason>[0]) =>
    noticesOf(computeSeason(plan)).map(({ kind, remedy }) => ({ kind, remedy }));

  it('is told that its zone gave up water in a cut, and not where the cut takes none away', () => {
    const cut = (share: number) =>
      oneBed({ supply: { sources: [], cuts: [{ from: '2027-04-01', to: '2027-12-31', share }] } });
    expect(kindsOf(cut(0.7))).toContainEqual({ kind: 'cut-short', remedy: 'cut-order' });
    expect(kindsOf(cut(0)).filter(({ kind }) => kind === 'cut-short')).toEqual([]);
  });

  it('is told that a restriction leaves no day', () => {
    const none = { from: '2027-06-01', to: '2027-08-31', weekdays: ['mon' as const] };
    const plan = mixedGarden({ choices: {}, log: {} });
    const supply = { sources: [], restrictions: [none, { ...none, weekdays: ['tue' as const] }] };
    expect(kindsOf({ ...plan, supply })).toContainEqual({ kind: 'restricted', remedy: 'ask-restriction' });
  });
});
