/** A place in a plan as a gardener would point at it: `Zone “Beds”, planting “Tomatoes”: area`. */
import { MONTHS, writtenDate } from '../words/day-words.ts';
import { shortText } from '../words/short-text.ts';
import { fieldsInWords } from './field-words.ts';
import type { Path } from './finding.ts';
import { fieldsIn, type Loose, listIn, textIn } from './loose.ts';

/** The document gives the names; where it has none, the place in the list stands for it. */
export function placeInWords(document: unknown, path: Path): string {
  const plan = fieldsIn(document);
  const [head, ...rest] = path;
  switch (head) {
    case undefined:
      return 'The plan';
    case 'zones':
      return inZones(plan, rest);
    case 'choices':
      return inChoices(plan, rest);
    case 'log':
      return inLog(plan, rest);
    case 'season':
      return join('Season', rest);
    case 'site':
      return rest[0] === 'climate' ? join('Climate', rest.slice(1)) : join('Site', rest);
    case 'supply':
      return inSupply(plan, rest);
    default:
      return join('The plan', path);
  }
}

function inZones(plan: Loose, path: Path): string {
  const [place, field, ...rest] = path;
  if (place === undefined) return 'The plan: zones';
  const zone = fieldsIn(listIn(plan['zones'])[Number(place)]);
  const zoneWords = named('Zone', zone, place);
  if (field !== 'plantings' || rest.length === 0) return join(zoneWords, path.slice(1));
  const [plantingPlace, plantingField, ...more] = rest;
  const planting = fieldsIn(listIn(zone['plantings'])[Number(plantingPlace)]);
  const plantingWords = `${zoneWords}, ${named('planting', planting, plantingPlace ?? 0)}`;
  if (plantingField !== 'lines' || more.length === 0) return join(plantingWords, rest.slice(1));
  return join(`${plantingWords}, line ${Number(more[0]) + 1}`, more.slice(1));
}

/** Choices by zone id, then by a day of the week. */
function inChoices(plan: Loose, [zoneId, day, ...fields]: Path): string {
  if (zoneId === undefined) return 'Choices by zone';
  const zone = zoneWithId(plan, zoneId);
  if (day === undefined) return `${zoneOrId(zone, zoneId)}: choices by week`;
  const week = `${zoneOrId(zone, zoneId)}, week of ${dateOrText(day)}`;
  if (fields[0] !== 'openDays' || fields[1] === undefined) return join(week, fields);
  const planting = listIn(zone?.['plantings'])
    .map(fieldsIn)
    .find(({ id }) => id === fields[1]);
  return `${week}: open days of ${planting ? quoted(planting['name']) : `the planting with the id ${quoted(fields[1])}`}`;
}

function inLog(plan: Loose, [kind, key, ...fields]: Path): string {
  if (kind === undefined) return 'The plan: log';
  if (key === undefined) return `Log: ${kind === 'runs' ? 'minutes run' : kind}`;
  if (kind === 'runs') return inRuns(plan, key, fields);
  return join(`Weather of ${kind === 'weeks' ? 'the week of ' : ''}${dateOrText(key)}`, fields);
}

function inRuns(plan: Loose, zoneId: string | number, [day]: Path): string {
  const zone = zoneOrId(zoneWithId(plan, zoneId), zoneId);
  return day === undefined ? `${zone}: minutes run` : `${zone}, week of ${dateOrText(day)}: minutes run`;
}

function zoneWithId(plan: Loose, zoneId: string | number): Loose | undefined {
  return listIn(plan['zones'])
    .map(fieldsIn)
    .find(({ id }) => id === zoneId);
}

function zoneOrId(zone: Loose | undefined, zoneId: string | number): string {
  return zone ? named('Zone', zone, 0) : `Zone with the id ${quoted(zoneId)}`;
}

function dateOrText(day: string | number): string {
  return shortText(writtenDate(String(day)));
}

function inSupply(plan: Loose, path: Path): string {
  const [head, place, ...fields] = path;
  if (head === 'tank') return join('Tank', path.slice(1));
  if (head === 'window') return join('Watering window', path.slice(1));
  if (head !== 'sources' || place === undefined) return join('Supply', path);
  const source = fieldsIn(listIn(fieldsIn(plan['supply'])['sources'])[Number(place)]);
  return join(`Supply, ${named('source', source, place)}`, fields);
}

function named(kind: string, part: Loose, place: string | number): string {
  const name = textIn(part['name']);
  return name === undefined || name === '' ? `${kind} ${Number(place) + 1}` : `${kind} ${quoted(name)}`;
}

function quoted(name: unknown): string {
  return `“${shortText(String(name))}”`;
}

/** Fields behind their container; a number is a month where twelve of them stand, else a place in a list. */
function join(container: string, path: Path): string {
  if (path.length === 0) return container;
  const fields = path.filter((part) => typeof part === 'string');
  const place = path.find((part) => typeof part === 'number');
  const words = fieldsInWords(fields);
  if (place === undefined) return `${container}: ${words}`;
  if (words === '') return `${container}, ${place + 1}`;
  return `${container}: ${words}${container === 'Climate' ? ` in ${MONTHS[place] ?? `month ${place + 1}`}` : `, ${place + 1}`}`;
}
