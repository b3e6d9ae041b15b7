/** A place in a plan as one would point at it: the part, with the names that it has in the document, and the fields inside it. */
import { shortText } from '../words/short-text.ts';
import { fieldsIn, type Loose, listIn, textIn } from './loose.ts';

/** Keys and indexes from the top of a document. */
export type Path = readonly (string | number)[];

export type PlacePart =
  | 'plan'
  | 'season'
  | 'site'
  | 'climate'
  /** Real seasons by day, and one stretch of them. */
  | 'years'
  | 'stretch'
  | 'supply'
  | 'source'
  | 'window'
  | 'tank'
  | 'zone'
  | 'planting'
  | 'line'
  /** Choices by zone; of one zone; of one zone and week; the open days of a planting in it. */
  | 'all-choices'
  | 'zone-choices'
  | 'choice'
  | 'open-days'
  | 'log'
  /** Minutes run in a zone, and in a week of it. */
  | 'zone-runs'
  | 'run'
  /** What ran in a zone on a day. */
  | 'day-run'
  | 'day-weather'
  | 'week-weather'
  /** A forecast by its day of issue, and what it says of a day. */
  | 'forecast'
  | 'forecast-day'
  | 'file';

export interface Place {
  readonly part: PlacePart;
  readonly zone?: Named;
  readonly planting?: Named;
  readonly source?: Named;
  /** Of a planting, or of a file; from 1. */
  readonly line?: number;
  /** Of a file, from 1. */
  readonly column?: number;
  /** ISO, or as it is written in the document. */
  readonly day?: string;
  /** Of a forecast: the day as it is written in the document, or its number in the list, from 1. */
  readonly issued?: string;
  /** Number of a stretch of days, from 1. */
  readonly stretch?: number;
  /** Inside the part, as they are called in the document. */
  readonly fields: readonly string[];
  /** In the list that the fields lead to, from 0. */
  readonly index?: number;
}

/** By its name; where it has none by its number in the list, from 1; where it is not there, by the id that is asked for. */
export type Named = { readonly name: string } | { readonly number: number } | { readonly id: string };

/** The document gives the names. */
export function placeAt(document: unknown, path: Path): Place {
  const plan = fieldsIn(document);
  const [head, ...rest] = path;
  switch (head) {
    case 'zones':
      return inZones(plan, rest);
    case 'choices':
      return inChoices(plan, rest);
    case 'log':
      return inLog(plan, rest);
    case 'season':
      return { part: 'season', ...inside(rest) };
    case 'site':
      return inSite(rest);
    case 'supply':
      return inSupply(plan, rest);
    default:
      return { part: 'plan', ...inside(path) };
  }
}

export const WHOLE_PLAN: Place = Object.freeze({ part: 'plan', fields: [] });

function inside(path: Path): Pick<Place, 'fields' | 'index'> {
  const index = path.find((part) => typeof part === 'number');
  const fields = path.filter((part) => typeof part === 'string').map((field) => shortText(field));
  return index === undefined ? { fields } : { fields, index };
}

function inSite(path: Path): Place {
  const [part, ...rest] = path;
  if (part === 'climate') return { part, ...inside(rest) };
  if (part !== 'years') return { part: 'site', ...inside(path) };
  const [field, index, ...fields] = rest;
  if (field !== 'stretches' || index === undefined) return { part, ...inside(rest) };
  return { part: 'stretch', stretch: Number(index) + 1, ...inside(fields) };
}

function inZones(plan: Loose, path: Path): Place {
  const [index, field, ...rest] = path;
  if (index === undefined) return { part: 'plan', fields: ['zones'] };
  const found = fieldsIn(listIn(plan['zones'])[Number(index)]);
  const zone = named(found, index);
  if (field !== 'plantings' || rest.length === 0) return { part: 'zone', zone, ...inside(path.slice(1)) };
  const [plantingIndex = 0, plantingField, ...more] = rest;
  const planting = named(fieldsIn(listIn(found['plantings'])[Number(plantingIndex)]), plantingIndex);
  if (plantingField !== 'lines' || more.length === 0) {
    return { part: 'planting', zone, planting, ...inside(rest.slice(1)) };
  }
  return { part: 'line', zone, planting, line: Number(more[0]) + 1, ...inside(more.slice(1)) };
}

/** By zone id, then by a day of the week. */
function inChoices(plan: Loose, [zoneId, day, ...fields]: Path): Place {
  if (zoneId === undefined) return { part: 'all-choices', fields: [] };
  const found = zoneWithId(plan, zoneId);
  const zone = namedOrId(found, zoneId);
  if (day === undefined) return { part: 'zone-choices', zone, fields: [] };
  const week = { zone, day: shortText(String(day)) };
  if (fields[0] !== 'openDays' || fields[1] === undefined) return { part: 'choice', ...week, ...inside(fields) };
  const planting = listIn(found?.['plantings'])
    .map(fieldsIn)
    .find(({ id }) => id === fields[1]);
  return { part: 'open-days', ...week, planting: namedOrId(planting, fields[1]), fields: [] };
}

function inLog(plan: Loose, [kind, key, ...fields]: Path): Place {
  if (kind === undefined) return { part: 'plan', fields: ['log'] };
  if (key === undefined) return { part: 'log', fields: [shortText(String(kind))] };
  if (kind === 'runs') return inRuns(plan, key, fields);
  if (kind === 'forecasts') return inForecasts(plan, key, fields);
  const part = kind === 'weeks' ? 'week-weather' : 'day-weather';
  return { part, day: shortText(String(key)), ...inside(fields) };
}

/** By zone id, then by a day of the week, then by days. */
function inRuns(plan: Loose, zoneId: string | number, [week, ...rest]: Path): Place {
  const zone = namedOrId(zoneWithId(plan, zoneId), zoneId);
  if (week === undefined) return { part: 'zone-runs', zone, fields: [] };
  const [days, day, ...fields] = rest;
  if (days !== 'days' || day === undefined) {
    return { part: 'run', zone, day: shortText(String(week)), ...inside(rest) };
  }
  return { part: 'day-run', zone, day: shortText(String(day)), ...inside(fields) };
}

function inForecasts(plan: Loose, index: string | number, path: Path): Place {
  const { issued } = fieldsIn(listIn(fieldsIn(plan['log'])['forecasts'])[Number(index)]);
  const forecast = { issued: shortText(textIn(issued) ?? String(Number(index) + 1)) };
  const [field, day, ...fields] = path;
  if (field !== 'days' || day === undefined) return { part: 'forecast', ...forecast, ...inside(path) };
  return { part: 'forecast-day', ...forecast, day: shortText(String(day)), ...inside(fields) };
}

function inSupply(plan: Loose, path: Path): Place {
  const [head, index, ...fields] = path;
  if (head === 'tank' || head === 'window') return { part: head, ...inside(path.slice(1)) };
  if (head !== 'sources' || index === undefined) return { part: 'supply', ...inside(path) };
  const source = fieldsIn(listIn(fieldsIn(plan['supply'])['sources'])[Number(index)]);
  return { part: 'source', source: named(source, index), ...inside(fields) };
}

function zoneWithId(plan: Loose, zoneId: string | number): Loose | undefined {
  return listIn(plan['zones'])
    .map(fieldsIn)
    .find(({ id }) => id === zoneId);
}

function named(part: Loose, index: string | number): Named {
  const name = textIn(part['name']);
  return name === undefined || name === '' ? { number: Number(index) + 1 } : { name: shortText(name) };
}

function namedOrId(part: Loose | undefined, id: string | number): Named {
  return part === undefined ? { id: shortText(String(id)) } : named(part, 0);
}
