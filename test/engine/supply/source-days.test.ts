import { describe, expect, it } from 'vitest';
import { sourceDays } from '../../../src/engine/supply/source-days.ts';

describe('sources by day', () => {
  const { flowLpm, pressureKpa, index } = sourceDays({
    span: { firstDay: 100, weeks: 1 },
    supply: {
      sources: [
        { from: 102, name: 'Hose', flowLpm: 12 },
        { from: 105, name: 'Main', flowLpm: 30, pressureKpa: 300 },
      ],
      windowWeekdays: 127,
      windowHoursPerDay: 24,
    },
  });

  it('each serves from its day on', () => {
    expect([...index]).toEqual([-1, -1, 0, 0, 0, 1, 1]);
    expect([...flowLpm]).toEqual([Number.NaN, Number.NaN, 12, 12, 12, 30, 30]);
  });

  it('what is not known is no number', () => {
    expect([...pressureKpa]).toEqual([...Array.from({ length: 5 }, () => Number.NaN), 300, 300]);
  });
});
