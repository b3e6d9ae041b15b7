import { describe, expect, it } from 'vitest';
import type { GardenPlanting, ZoneSoil } from '../../../src/engine/garden.ts';
import { AlikeDemands } from '../../../src/engine/season/alike-demands.ts';
import type { RainKeeper } from '../../../src/engine/season/kept-rain.ts';
import { type PlantingDemand, plantingDemand } from '../../../src/engine/season/planting-demand.ts';
import { monthShares } from '../../../src/engine/season/planting-rain.ts';
import { seasonWeather } from '../../../src/engine/weather.ts';
import { plainGarden, plainPlanting, plainZone } from '../../support/plain-garden.ts';

const garden = plainGarden([plainZone()]);
const soil = plainZone().soil;
const weather = seasonWeather(garden);
const planting = plainPlanting();
const { coefficient, rootZone } = planting;
if (coefficient.kind !== 'landscape') throw new Error('the plain planting is a landscape one');

const keeperOf = (demand: PlantingDemand, change: Partial<RainKeeper> = {}): RainKeeper => ({
  demand,
  isRefill: false,
  wateringDays: 0b1001000,
  ...change,
});

describe('plantings that ask alike', () => {
  it('share their days, whatever their name, ground and line', () => {
    const alike = new AlikeDemands();
    const demand = alike.demandOf({ planting, soil }, weather);
    expect(demand).toEqual(plantingDemand(planting, soil, weather));
    const other = structuredClone({ ...planting, id: 'other', name: 'Other', areaM2: 3, lines: [], hasShutOff: true });
    expect(alike.demandOf({ planting: other, soil: structuredClone(soil) }, weather)).toBe(demand);
    const shares = alike.sharesOf(keeperOf(demand), garden.site, weather);
    expect(shares).toEqual(monthShares(keeperOf(demand), garden.site, weather));
    expect(alike.sharesOf(keeperOf(demand), garden.site, weather)).toBe(shares);
  });

  it.each<[string, Partial<GardenPlanting>, Partial<ZoneSoil>]>([
    ['factor', { coefficient: { ...coefficient, factor: coefficient.factor / 2 } }, {}],
    // The same product: the fingerprint cannot tell them apart, the comparison must.
    [
      'density',
      { coefficient: { ...coefficient, factor: coefficient.factor / 2, density: 2 * coefficient.density } },
      {},
    ],
    ['establishing', { establishing: { until: planting.from + 7, factor: 1.5 } }, {}],
    ['roots', { rootZone: { ...rootZone, depthM: 2 * rootZone.depthM } }, {}],
    ['allowed depletion', { rootZone: { ...rootZone, allowedDepletion: rootZone.allowedDepletion / 2 } }, {}],
    ['adjustment', { rootZone: { ...rootZone, adjustsDepletion: !rootZone.adjustsDepletion } }, {}],
    ['target', { rootZone: { ...rootZone, targetDepletion: rootZone.targetDepletion + 0.1 } }, {}],
    ['start', { rootZone: { ...rootZone, startDepletion: rootZone.startDepletion + 0.1 } }, {}],
    ['first day', { from: weather.firstDay + 3 }, {}],
    ['last day', { to: weather.firstDay + 3 }, {}],
    ['soil', {}, { availableWater: 2 * soil.availableWater }],
  ])('do not with another %s', (_, change, ofSoil) => {
    const alike = new AlikeDemands();
    const demand = alike.demandOf({ planting, soil }, weather);
    const [other, otherSoil] = [
      { ...planting, ...change },
      { ...soil, ...ofSoil },
    ];
    const found = alike.demandOf({ planting: other, soil: otherSoil }, weather);
    expect(found).not.toBe(demand);
    expect(found).toEqual(plantingDemand(other, otherSoil, weather));
  });

  it('keep their rain by themselves where they are watered in another way or on other days', () => {
    const alike = new AlikeDemands();
    const demand = alike.demandOf({ planting, soil }, weather);
    const shares = alike.sharesOf(keeperOf(demand), garden.site, weather);
    expect(alike.sharesOf(keeperOf(demand, { isRefill: true }), garden.site, weather)).not.toBe(shares);
    expect(alike.sharesOf(keeperOf(demand, { wateringDays: 0b1 }), garden.site, weather)).not.toBe(shares);
    expect(alike.sharesOf(keeperOf(demand), garden.site, weather)).toBe(shares);
  });

  it('are reckoned anew under another weather and another rule for rain', () => {
    const alike = new AlikeDemands();
    const demand = alike.demandOf({ planting, soil }, weather);
    const shares = alike.sharesOf(keeperOf(demand), garden.site, weather);
    const site = { ...garden.site, rain: { ...garden.site.rain } };
    expect(alike.sharesOf(keeperOf(demand), site, weather)).not.toBe(shares);
    const later = { ...weather, eto: { ...weather.eto, mm: weather.eto.mm.map((mm) => 2 * mm) } };
    expect(alike.demandOf({ planting, soil }, later)).toEqual(plantingDemand(planting, soil, later));
  });
});
