import { describe, expect, it } from 'vitest';
import type { ZoneRule } from '../../../src/engine/garden.ts';
import { plantingWeek } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import { zoneWeek } from '../../../src/engine/season/zone-week.ts';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { traceCell } from '../../../src/explain/trace/trace-cell.ts';
import { plainGarden, plainPlanting, plainZone } from '../../support/plain-garden.ts';

/**
 * The plain garden's bed stands behind a shut-off beside one of the same size that has no line yet.
 *
 *     bed asks     17.5 mm at 4.8 mm/h on 2 days: 109.375 min, 109 to the minute
 *     new bed      needs 7 x 0.5 x 5 = 17.5 mm in its first week, 175 L on 10 m2, and no minutes bring it
 */
const week = (rule: ZoneRule) => {
  const bed = plainPlanting({ hasShutOff: true });
  const unlaid = plainPlanting({ id: 'new', name: 'New bed', lines: [] });
  return runSeason(plainGarden([plainZone({ rule, plantings: [unlaid, bed] })]));
};

describe('a planting without a line', () => {
  it.each<ZoneRule>([
    { kind: 'thirstiest' },
    { kind: 'area-weighted' },
    { kind: 'planting', plantingId: 'bed' },
    { kind: 'planting', plantingId: 'new' },
  ])('neither asks for minutes nor holds its zone back: %o', (rule) => {
    const season = week(rule);
    const [zone] = season.zones;
    if (zone === undefined) throw new Error('no zone');
    const [unlaid, bed] = zone.plantings.map((planting) => plantingWeek(planting, 0));
    expect(zoneWeek(zone, 0)).toMatchObject({ minutesPerDay: 109, minutes: 218 });
    expect(zoneWeek(zone, 0).minutesWanted).toBeCloseTo(109.375, 9);
    expect(bed).toMatchObject({ openDays: 2, state: 'met' });
    expect(bed?.litres).toBeCloseTo(218, 9);
    expect(unlaid).toMatchObject({ minutesWanted: 0, litres: 0 });
    expect(unlaid?.neededMm).toBeCloseTo(17.5, 9);
    expect(unlaid?.neededLitres).toBeCloseTo(175, 9);
  });

  it('has its need told, and the reason why it is not met', () => {
    const season = week({ kind: 'thirstiest' });
    expect(noticesOf(season).filter(({ plantingId }) => plantingId === 'new')).toMatchObject([{ kind: 'no-line' }]);
    const wanted = traceCell(season, { zoneId: 'zone', week: 0 }).find(({ id }) => id === 'zone-minutes');
    expect(wanted?.inputs).toMatchObject([
      { label: { id: 'planting', name: 'New bed' }, codes: 'exclusion', value: 'no-line' },
      { label: { id: 'planting', name: 'Bed' }, value: expect.closeTo(109.375, 9) },
    ]);
  });
});
