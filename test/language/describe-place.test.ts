import { describe, expect, it } from 'vitest';
import { describePlace } from '../../src/language/describe-place.ts';
import { readerFor } from '../../src/language/reader.ts';
import { type Path, placeAt } from '../../src/plan/reading/place.ts';
import { mixedGarden } from '../support/small-plans.ts';

const said = (document: unknown, path: Path) =>
  describePlace(placeAt(document, path), readerFor('en-US', 'us')).replaceAll('\u00a0', ' ');

describe('a place of a plan in words', () => {
  it.each<[(string | number)[], string]>([
    [[], 'The plan'],
    [['name'], 'The plan: name'],
    [['zones'], 'The plan: zones'],
    [['zones', 0], 'Zone “Beds”'],
    [['zones', 0, 'plantings'], 'Zone “Beds”: plantings'],
    [['zones', 0, 'rule', 'kind'], 'Zone “Beds”: kind of rule'],
    [['zones', 0, 'application', 'value'], 'Zone “Beds”: value'],
    [['zones', 0, 'wateringDays', 2], 'Zone “Beds”: watering days, 3'],
    [['zones', 7, 'name'], 'Zone 8: name'],
    [['zones', 0, 'plantings', 1], 'Zone “Beds”, planting “Shrubs”'],
    [['zones', 0, 'plantings', 9, 'extent', 'diameter'], 'Zone “Beds”, planting 10: diameter'],
    [
      ['zones', 0, 'plantings', 1, 'need', 'stages', 'mid'],
      'Zone “Beds”, planting “Shrubs”: days of the mid-season stage',
    ],
    [['zones', 0, 'plantings', 1, 'need', 'coefficients', 'end'], 'Zone “Beds”, planting “Shrubs”: Kc at the end'],
    [['zones', 0, 'plantings', 1, 'inGround'], 'Zone “Beds”, planting “Shrubs”: days in the ground'],
    [['zones', 0, 'plantings', 1, 'establishing', 'until'], 'Zone “Beds”, planting “Shrubs”: establishing, until'],
    [['zones', 0, 'plantings', 1, 'lines'], 'Zone “Beds”, planting “Shrubs”: lines'],
    [
      ['zones', 0, 'plantings', 1, 'lines', 0, 'emitter', 'exponent'],
      'Zone “Beds”, planting “Shrubs”, line 1: exponent of the emitter',
    ],
    [['site', 'rain', 'method'], 'Site: rain, method'],
    [['site', 'climate'], 'Climate'],
    [['site', 'climate', 'eto', 0], 'Climate: reference ET in January'],
    [['site', 'climate', 'rain', 12], 'Climate: rain, 13'],
    [['supply'], 'Supply'],
    [['supply', 'sources', 0, 'pressure'], 'Supply, source “Hose bib”: pressure'],
    [['supply', 'sources', 0, 'flow', 'seconds'], 'Supply, source “Hose bib”: seconds to fill the bucket'],
    [['supply', 'window', 'hoursPerDay'], 'Watering window: hours a day'],
    [['supply', 'allowance', 'perWeek'], 'Supply: allowance for a week'],
    [['supply', 'tank'], 'Tank'],
    [['log'], 'The plan: log'],
    [['log', 'days'], 'Log: days'],
    [['log', 'days', '2027-04-20', 'rain'], 'Weather of April 20, 2027: rain'],
    [['log', 'weeks', '2027-05-03', 'eto'], 'Weather of the week of May 3, 2027: reference ET'],
    [['log', 'runs'], 'Log: minutes run'],
    [['log', 'runs', 'beds', '2027-05-17'], 'Zone “Beds”, week of May 17, 2027: minutes run'],
    [['choices'], 'Choices by zone'],
    [['choices', 'beds'], 'Zone “Beds”: choices by week'],
    [['choices', 'beds', '2027-07-12', 'openDays'], 'Zone “Beds”, week of July 12, 2027: open days'],
    [['choices', 'cellar', 'someday', 'minutes'], 'Zone with the id “cellar”, week of someday: minutes'],
  ])('%j', (path, words) => {
    expect(said(mixedGarden(), path)).toBe(words);
  });

  it('is found in a document that is no plan at all', () => {
    const path = ['zones', 0, 'plantings', 0, 'lines', 0, 'flow'];
    for (const document of [undefined, null, 7, [], { zones: 7 }, { zones: [7] }]) {
      expect(said(document, path)).toBe('Zone 1, planting 1, line 1: flow');
    }
  });
});
