import { expect, it } from 'vitest';
import { ASSUMPTION, CROP_STAGES } from '../../../src/engine/plants/crop-stages.data.ts';
import { CROPS } from '../../../src/engine/plants/crops.data.ts';
import { PLANT_TYPES } from '../../../src/engine/plants/plant-types.data.ts';
import { WATER_USE_CLASSES } from '../../../src/engine/plants/water-use-classes.data.ts';
import { published } from '../../../src/explain/trace/published.ts';

it.each([
  ['FAO-56 Table 11 (p. 104)', 'FAO-56 Table 11 (p. 104)'],
  [ASSUMPTION, { id: 'choice' }],
  ['FAO-56 Table 11; row from memory', { id: 'not-checked', cite: 'FAO-56 Table 11' }],
  ['Handbook (2017), annual average, from memory', { id: 'not-checked', cite: 'Handbook (2017), annual average' }],
])('a source “%s” is %j', (source, said) => {
  expect(published(source)).toEqual(said);
});

it('a source of any plant, crop or stage is said to be from memory as one that was not checked', () => {
  const sources = [...CROPS, ...CROP_STAGES, ...PLANT_TYPES, ...WATER_USE_CLASSES].map(({ source }) => source);
  expect(sources.filter((source) => source.includes('from memory')).length).toBeGreaterThan(0);
  expect(sources.map((source) => JSON.stringify(published(source))).filter((said) => said.includes('memory'))).toEqual(
    [],
  );
});
