/**
 * What no field can say alone: ids that are there, days inside the season, numbers that agree. Works on any document, however broken,
 * so that it finds its faults beside the schema's.
 */
import type { UnitSystem } from '../../../engine/units.ts';
import type { Issue } from '../issue.ts';
import { fieldsIn, type Loose, listIn } from '../loose.ts';
import { climateRelations, dayRelations } from './amount-relations.ts';
import { forecastRelations } from './forecast-relations.ts';
import { idRelations } from './id-relations.ts';
import { supplyRelations } from './supply-relations.ts';
import { onceIssues, spanOf, throughIssues } from './week-relations.ts';
import { yearsRelations } from './years-relations.ts';
import { choicesRelations, runsRelations } from './zone-record-relations.ts';
import { zoneRelations } from './zone-relations.ts';

const NOTHING: Loose = {};

/** `valid`: a document known to be without fault; what is the same object in both is passed over. */
export function relations(document: Loose, valid: Loose = NOTHING): readonly Issue[] {
  return [
    ...siteRelations(document, valid),
    ...zonesRelations(document, valid),
    ...weatherRelations(document, valid),
    ...runsRelations(document, valid),
    ...choicesRelations(document, valid),
  ];
}

function siteRelations(document: Loose, valid: Loose): readonly Issue[] {
  const { site, supply } = document;
  const units = unitsIn(document);
  const { climate, years } = fieldsIn(site);
  const before = fieldsIn(valid['site']);
  const isKnown = climate !== undefined && climate === before['climate'];
  return [
    ...(site === valid['site'] || isKnown ? [] : climateRelations(climate, ['site', 'climate'], units)),
    ...(years === before['years'] ? [] : yearsRelations(years, ['site', 'years'], units)),
    ...(supply === valid['supply'] ? [] : supplyRelations(supply, ['supply'], units)),
  ];
}

function zonesRelations({ zones }: Loose, valid: Loose): readonly Issue[] {
  if (zones === valid['zones']) return [];
  const known = new Set(listIn(valid['zones']));
  const kept = new Set(listIn(zones));
  const former = [...known].filter((zone) => !kept.has(zone));
  const knownPlantings = new Set(former.flatMap((zone) => listIn(fieldsIn(zone)['plantings'])));
  const changed = listIn(zones).flatMap((zone, index) =>
    known.has(zone) ? [] : zoneRelations(zone, ['zones', index], knownPlantings),
  );
  return [...changed, ...idRelations(zones)];
}

function weatherRelations(document: Loose, valid: Loose): readonly Issue[] {
  const log = fieldsIn(document['log']);
  const before = fieldsIn(valid['log']);
  const known = fieldsIn(before['days']);
  const days = log['days'] === before['days'] ? [] : Object.entries(fieldsIn(log['days']));
  const sameWeeks = log['weeks'] === before['weeks'] && document['season'] === valid['season'];
  const units = unitsIn(document);
  const span = spanOf(document['season']);
  const { forecasts } = log;
  return [
    ...days.flatMap(([day, weather]) =>
      weather === known[day] ? [] : dayRelations(weather, ['log', 'days', day], units),
    ),
    ...(sameWeeks ? [] : onceIssues(log['weeks'], ['log', 'weeks'], span)),
    ...(sameWeeks ? [] : throughIssues(log['weeks'], ['log', 'weeks'], span)),
    ...(forecasts === before['forecasts']
      ? []
      : forecastRelations(forecasts, ['log', 'forecasts'], new Set(listIn(before['forecasts'])))),
  ];
}

/** The unit system of a document, where it has one. */
const unitsIn = ({ units }: Loose): UnitSystem | undefined =>
  units === 'us' || units === 'metric' ? units : undefined;
