import { describe, expect, it } from 'vitest';
import { runSeason } from '../../../../src/engine/season/run-season.ts';
import { noticesOf } from '../../../../src/explain/notices/notices-of.ts';
import { plainGarden, plainPlanting, plainZone, thirsty } from '../../../support/plain-garden.ts';

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
