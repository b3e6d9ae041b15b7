/**
 * Writes the plan's published JSON Schema, for editors and for programs in other languages:
 * `node --import ./.build/run-ts.mjs .build/json-schema.ts`.
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { toJsonSchema } from '@valibot/to-json-schema';
import { planSchema } from '../src/plan/schema/either-units.ts';
import { PLAN_SCHEMAS } from '../src/plan/schema/plan-schema.ts';

export const JSON_SCHEMA_PATH = 'web-types/runnel-plan.schema.json';

const TITLE = 'Runnel plan';
const DESCRIPTION =
  'A plan of a garden’s watering season (*.runnel.json): what a person decided or observed, in the unit system that it declares. ' +
  'What fields cannot say alone is checked besides: ids that are there, days inside the season, numbers that agree.';

/** The text of the file. */
export function planJsonSchema(): string {
  const schema = toJsonSchema(planSchema, {
    target: 'draft-2020-12',
    // A whole number, and a number that is not infinite, are what JSON has; that a day exists is said by its format.
    ignoreActions: ['finite', 'check'],
    definitions: { ...definitionsOf('us'), ...definitionsOf('metric') },
  });
  const { $schema, ...rest } = withUnits(schema) as Readonly<Record<string, unknown>>;
  return `${JSON.stringify({ $schema, title: TITLE, description: DESCRIPTION, ...rest }, undefined, 2)}\n`;
}

/** Parts that would otherwise stand in the file many times. */
function definitionsOf(units: 'us' | 'metric') {
  const { site, supply, zones } = PLAN_SCHEMAS[units].entries;
  const zone = zones.item;
  const planting = zone.entries.plantings.item;
  return {
    [`site-${units}`]: site,
    [`supply-${units}`]: supply,
    [`zone-${units}`]: zone,
    [`planting-${units}`]: planting,
    [`line-${units}`]: planting.entries.lines.item,
  };
}

/** A quantity's unit said in its description, instead of in words that JSON Schema does not have. */
function withUnits(part: unknown): unknown {
  if (Array.isArray(part)) return part.map(withUnits);
  if (typeof part !== 'object' || part === null) return part;
  const fields = Object.fromEntries(Object.entries(part).map(([key, value]) => [key, withUnits(value)]));
  const { quantity, unit, description, ...rest } = fields;
  if (typeof quantity !== 'string' || typeof unit !== 'string') return fields;
  return { ...rest, description: [description, `Unit: ${unit}.`].filter(Boolean).join(' ') };
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const file = fileURLToPath(new URL(`../${JSON_SCHEMA_PATH}`, import.meta.url));
  await mkdir(fileURLToPath(new URL('.', pathToFileURL(file))), { recursive: true });
  await writeFile(file, planJsonSchema());
}
