import { expect, it } from 'vitest';
import { chartLines } from '../../../src/elements/chart/chart-lines.ts';
import { cumulative } from '../../../src/engine/season/cumulative.ts';
import { SUPPLY_FIELDS } from '../../../src/engine/season/season.ts';
import { WeekFigures } from '../../../src/engine/season/week-figures.ts';
import { supplyBlock } from '../shared/supply-block.ts';

const block = supplyBlock({
  demandLitres: [100, 100, 100],
  usedLitres: [100, 80, 100],
  rainStayedLitres: [40, 20, 0],
  irrigationStayedLitres: [30, 0, 130],
  storageLitres: [-30, -60, 30],
});
const heights = (line: readonly { readonly y: number }[]) => line.map(({ y }) => y);

it('starts every line at nothing, on the bound before the first week', () => {
  const { weeks, ...lines } = chartLines(cumulative(block), 'metric');
  expect(weeks).toBe(3);
  for (const line of Object.values(lines)) {
    expect(line[0]).toEqual({ x: 0, y: 0 });
    expect(line.map(({ x }) => x)).toEqual([0, 1, 2, 3]);
  }
});

it('stacks rain, irrigation and water from the soil', () => {
  const lines = chartLines(cumulative(block), 'metric');
  expect(heights(lines.rain)).toEqual([0, 40, 60, 60]);
  expect(heights(lines.irrigation)).toEqual([0, 70, 90, 220]);
  expect(heights(lines.fromSoil)).toEqual([0, 100, 180, 280]);
});

it('leaves exactly the unmet demand between the supplies and the line of demand', () => {
  const totals = cumulative(block);
  const { demand, met, fromSoil } = chartLines(totals, 'metric');
  const gaps = heights(demand).map((height, bound) => height - (met[bound]?.y ?? Number.NaN));
  expect(gaps).toEqual([0, ...totals.unmet]);
  expect(heights(fromSoil)).toEqual(heights(met));
});

it('lays what the roots did not keep on the line of demand: the top is rain, soil and meter', () => {
  const litres = [50, 10, 160];
  const { weeks, fields, block: before } = block.figures;
  const figures = new WeekFigures(weeks, fields, before.slice());
  litres.forEach((each, week) => {
    figures.block[week * fields + SUPPLY_FIELDS.litres] = each;
  });
  const watered = { ...block, figures };
  const { demand, notKept, meter } = chartLines(cumulative(watered), 'metric');
  expect(heights(meter)).toEqual([0, 50, 60, 220]);
  // 20, 30 and 60 L by then: 50 - 30, 60 - 30 and 220 - 160.
  expect(heights(notKept).map((top, bound) => top - (demand[bound]?.y ?? Number.NaN))).toEqual([0, 20, 30, 60]);
});

it('states volumes in the unit of the plan: 231 cubic inches to a gallon', () => {
  const { demand } = chartLines(cumulative(supplyBlock({ demandLitres: [3.785411784] })), 'us');
  expect(demand[1]?.y).toBeCloseTo(1, 12);
});
