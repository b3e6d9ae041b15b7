/**
 * Writes down the figures of every demonstration plan and of random ones, as the code at hand computes them:
 * `node --import ./.build/run-ts.mjs test/laws/frozen/freeze.ts`. Only to be run where figures are meant to change, with the
 * change's source in the same commit.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import fc from 'fast-check';
import { seattlePlan } from '../../../demo/seattle-plan.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { digestsOf, type FrozenSeason, packed } from './frozen-seasons.ts';
import type { Pins } from './season-digest.ts';

const DEMOS = [
  ...['plans/lantern-lane', 'plans/mixed-border', 'club/garden', 'club/nursery'].map((name) => ({
    name,
    plan: JSON.parse(readFileSync(new URL(`../../../demo/${name}.runnel.json`, import.meta.url), 'utf8')),
  })),
  {
    name: 'seattle',
    plan: seattlePlan(readFileSync(new URL(import.meta.resolve('vega-datasets/data/seattle-weather.csv')), 'utf8'))
      .plan,
  },
];

const random = fc
  .sample(arbitraryPlan({ mostWeeks: 53, mostZones: 4, mostPlantings: 3 }), { numRuns: 500, seed: 887 })
  .map((plan, index) => ({ name: `random ${index}`, plan }));

function frozen({ name, plan }: { readonly name: string; readonly plan: unknown }, byZone: boolean): FrozenSeason {
  const { exact, season, zones } = digestsOf(plan, byZone);
  return { name, plan, exact, season: sumsOf(season), zones: zones.map(sumsOf) };
}

function sumsOf(pins: Pins): ReadonlyMap<string, number> {
  return new Map([...pins].map(([name, { sum }]) => [name, sum]));
}

writeFileSync(
  new URL('./frozen-seasons.jsonl.br', import.meta.url),
  packed([...DEMOS.map((demo) => frozen(demo, true)), ...random.map((plan) => frozen(plan, false))]),
);
