import { expect, it } from 'vitest';
import { runsNeed } from '../../../src/engine/application/runs-need.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import { lineOf } from '../../support/garden-planting.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../support/plain-garden.ts';

// plain-garden.ts: 2.5 mm a day are used. A pot that has 1 mm readily needs 3 runs, one of 2 mm 2; its line lies from the second week on.
const container = { count: 10, volumeLitres: 10, openingM: 0.25, rainShare: 1 };
const pot = (id: string, readilyMm: number, from = FIRST_DAY) =>
  plainPlanting({
    id,
    container,
    rootZone: { allowedDepletion: readilyMm / 75 },
    lines: [lineOf(from, 'dripline', 60)],
  });
const [zone = expect.unreachable()] = runSeason(
  plainGarden([plainZone({ plantings: [pot('two', 2), pot('three', 1, FIRST_DAY + 7)] })]),
).zones;
const needIn = (weeks: readonly number[], mask: number) => runsNeed(zone, FIRST_DAY, weeks, () => mask);

it('is that of the planting that needs most runs, on a day on which a line waters it', () => {
  expect(needIn([0], 0b1)).toMatchObject({ plantingId: 'two', runs: 2, isInContainer: true });
  expect(needIn([0, 1], 0b1)).toEqual({
    plantingId: 'three',
    runs: 3,
    isInContainer: true,
    readilyAvailableMm: expect.closeTo(1, 9),
    useMm: expect.closeTo(2.5, 2),
  });
});

it('is none without a watering day, and where one run does', () => {
  expect(needIn([0, 1], 0)).toBeUndefined();
  const [bed = expect.unreachable()] = runSeason(plainGarden()).zones;
  expect(runsNeed(bed, FIRST_DAY, [0, 1], () => 127)).toBeUndefined();
});
