import { describe, expect } from 'vitest';
import type { Garden } from '../../src/engine/garden.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { seasonSupply } from '../../src/engine/supply/season-supply.ts';
import { wateringTimes } from '../../src/explain/watering-times.ts';
import { gardenOf } from '../../src/plan/garden-of.ts';
import { totalAvailableMm } from '../oracle/crop.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { arbitraryPlan } from '../support/arbitrary-plan.ts';
import { arbitrarySuppliedGarden } from '../support/garden-supply.ts';
import { law } from './law.ts';
import { plantingRows, zoneRows } from './weeks-of.ts';

/** The one figure that has a sign: water that the soil gained. */
const SIGNED = 'storageLitres';

/** What rounding may leave below zero of a difference of two depths, as a share of the depths themselves. */
const ROUNDING = 1e-9;

describe('every figure is a plain number', () => {
  law('in a random garden', {
    on: arbitraryGarden(),
    runs: 1_000,
    holds: expectPlain,
  });

  law('in a random plan', {
    on: arbitraryPlan({ mostZones: 3, mostWeeks: 20 }).map(gardenOf),
    runs: 300,
    holds: expectPlain,
  });

  law('in what a random garden asks of its supply', {
    on: arbitrarySuppliedGarden(),
    runs: 1_000,
    holds: (garden) => {
      const season = runSeason(garden);
      const { flows, drawL, tank, meteredL, allowance } = seasonSupply(season);
      const times = wateringTimes(season);
      const rows = [...flows, drawL, times.minutesNeeded, times.windowMinutes, meteredL];
      const ofTank = tank === undefined ? [] : [tank.roofL, tank.besidesL, tank.levelL, tank.overflowL, tank.shortL];
      const all = [...rows, ...ofTank, ...(allowance === undefined ? [] : [allowance.cumulativeL])];
      expect(all.flatMap((row) => faultsOf('supply', row))).toEqual([]);
    },
  });
});

function expectPlain(garden: Garden): void {
  const season = runSeason(garden);
  const faults: string[] = [];
  for (const { zone, planting, week } of plantingRows(season)) {
    const name = `${planting.id} week ${week.week}`;
    faults.push(...faultsOf(name, week));
    const tawMm = totalAvailableMm(planting, zone.soil.availableWater, planting.to);
    if (week.depletionEndMm > tawMm * (1 + ROUNDING)) faults.push(`${name}: drier than the soil can be`);
    if (week.usedMm > week.demandMm * (1 + ROUNDING)) faults.push(`${name}: used more than it would`);
    if (week.openDays > bits(week.openMask)) faults.push(`${name}: water ran on a day on which it is closed`);
    if (bits(week.openMask) > week.groundDays) faults.push(`${name}: open on a day on which it is not there`);
    if (week.shortDays > week.groundDays) faults.push(`${name}: short on more days than it stood there`);
  }
  for (const { zone, week } of zoneRows(season)) faults.push(...faultsOf(`${zone.id} week ${week.week}`, week));
  expect(faults).toEqual([]);
}

function faultsOf(name: string, week: object): readonly string[] {
  const figures = Object.entries(week) as [string, number | string][];
  return figures.flatMap(([field, figure]) => {
    if (typeof figure === 'string') return [];
    if (!Number.isFinite(figure)) return [`${name}: ${field} is ${figure}`];
    return field !== SIGNED && figure < -ROUNDING ? [`${name}: ${field} is ${figure}`] : [];
  });
}

function bits(mask: number): number {
  return [...mask.toString(2)].filter((digit) => digit === '1').length;
}
