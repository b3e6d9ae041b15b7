/**
 * Writes the plan's published JSON Schema, for editors and for programs in other languages:
 * `node --import ./.build/run-ts.mjs .build/json-schema.ts`.
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { toJsonSchema } from '@valibot/to-json-schema';
import type { Quantity, UnitSystem } from '../src/engine/units.ts';
import { unitOf } from '../src/engine/units.ts';
import { planFields } from '../src/language/en/plan-fields.ts';
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
  const { $schema, ...rest } = described(schema as Node);
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

type Node = { [key: string]: unknown };

/** The schema with what its fields mean, by their places; what the kit's own metadata say goes into the words or out. */
function described(schema: Node): Node {
  const used = new Set<string>();
  const definitions = schema['$defs'] as Readonly<Record<string, Node>>;
  const say = (at: Node, key: string): void => {
    const reference = at['$ref'];
    const node = typeof reference === 'string' ? (definitions[reference.slice('#/$defs/'.length)] ?? {}) : at;
    sayOf(node, key, used);
    sayInside(node, key);
  };
  const sayInside = (node: Node, key: string): void => {
    // The kinds of a variant mean together what stands at their place.
    for (const option of nodesIn(node['oneOf'] ?? node['anyOf'])) sayInside(takeMetadata(option).rest, key);
    const inside = key === '' ? '' : `${key}${kindOf(node)}.`;
    const properties = (node['properties'] ?? {}) as Readonly<Record<string, Node>>;
    for (const [name, property] of Object.entries(properties)) say(property, `${inside}${name}`);
    for (const item of nodesIn([node['items'], node['additionalProperties']])) say(item, `${key}.*`);
  };
  say(schema, '');
  const unused = Object.keys(MEANINGS).filter((key) => !used.has(key));
  if (unused.length > 0) throw new Error(`no field of the plan stands at ${unused.join(', ')}`);
  return schema;
}

function sayOf(node: Node, key: string, used: Set<string>): void {
  const { unit } = takeMetadata(node);
  const meaning = Object.hasOwn(MEANINGS, key) ? MEANINGS[key] : undefined;
  if (meaning !== undefined) used.add(key);
  const words = [meaning, unit && `Unit: ${unit}.`].filter(Boolean).join(' ');
  if (words !== '') node['description'] = words;
}

/** Takes the kit's own metadata out of a part, and gives the unit that they name. */
function takeMetadata(rest: Node): { readonly rest: Node; readonly unit: string | undefined } {
  const { quantity, units } = rest;
  for (const name of ['quantity', 'units', 'unit', 'isExact']) delete rest[name];
  const unit = quantity === undefined ? undefined : unitOf(quantity as Quantity, units as UnitSystem).name;
  return { rest, unit };
}

const MEANINGS: Readonly<Record<string, string>> = planFields;

const nodesIn = (value: unknown): readonly Node[] =>
  Array.isArray(value) ? value.filter((item) => typeof item === 'object' && item !== null) : [];

function kindOf({ properties }: Node): string {
  const kind = (properties as { readonly kind?: Node } | undefined)?.kind?.['const'];
  return kind === undefined ? '' : `[${kind}]`;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const file = fileURLToPath(new URL(`../${JSON_SCHEMA_PATH}`, import.meta.url));
  await mkdir(fileURLToPath(new URL('.', pathToFileURL(file))), { recursive: true });
  await writeFile(file, planJsonSchema());
}
