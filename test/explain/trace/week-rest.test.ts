import { expect, it } from 'vitest';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import { restOfWeek } from '../../../src/explain/trace/week-rest.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../support/plain-garden.ts';

it('a week is one of rest where the planting asks for no water on any of its days in the ground', () => {
  const rest = [{ from: FIRST_DAY + 8, to: FIRST_DAY + 20, kind: 'frozen' as const }];
  const planting = plainPlanting({ rest, to: FIRST_DAY + 30 });
  const season = runSeason(plainGarden([plainZone({ plantings: [planting] })]));
  const [own] = season.zones.flatMap(({ plantings }) => plantings);
  if (own === undefined) throw new Error('the garden has a planting');
  // The second week rests but for its first day.
  expect([0, 1, 2, 3].map((week) => restOfWeek(season, own, week))).toEqual([
    undefined,
    undefined,
    'frozen',
    undefined,
  ]);
});
