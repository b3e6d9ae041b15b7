/** What must agree inside one zone: the rule's planting, the days in the ground, the days of the lines. */

import { isAnnualCrop } from '../../../engine/plants/find-crop.ts';
import type { Issue } from '../issue.ts';
import { dayIn, fieldsIn, type Loose, listIn, textIn } from '../loose.ts';
import type { Path } from '../place.ts';

/** `valid`: plantings known to be without fault. */
export function zoneRelations(zone: unknown, at: Path, valid: ReadonlySet<unknown>): readonly Issue[] {
  const { rule, plantings } = fieldsIn(zone);
  const parts = listIn(plantings).map(fieldsIn);
  return [
    ...ruleIssues(fieldsIn(rule), parts, at),
    ...parts.flatMap((planting, index) => {
      if (valid.has(planting)) return [];
      const there = [...at, 'plantings', index];
      return [...groundIssues(planting, there), ...lineIssues(planting, there)];
    }),
  ];
}

function ruleIssues(rule: Loose, plantings: readonly Loose[], at: Path): readonly Issue[] {
  const named = rule['kind'] === 'planting' ? textIn(rule['planting']) : undefined;
  if (named === undefined || plantings.some(({ id }) => id === named)) return [];
  return [{ path: [...at, 'rule', 'planting'], value: named, code: 'planting-unknown', values: {} }];
}

function groundIssues({ inGround, need }: Loose, at: Path): readonly Issue[] {
  const { from, to } = fieldsIn(inGround);
  const last = dayIn(to);
  const first = dayIn(from);
  const start = first ?? annualPlanting(fieldsIn(need));
  if (last === undefined || start === undefined || start <= last) return [];
  const of = first === undefined ? 'planting-day' : 'first-day';
  return [{ path: [...at, 'inGround', 'to'], value: to, code: 'ends-before-start', values: { start, of } }];
}

/** An annual crop's planting day is its first in the ground unless the plan says otherwise. */
function annualPlanting({ kind, crop, plantedOn }: Loose) {
  return kind === 'crop' && isAnnualCrop(crop) ? dayIn(plantedOn) : undefined;
}

/** A line does not end before it is laid: on its own first day, or else the planting's where the plan names one. */
function lineIssues({ lines, inGround }: Loose, at: Path): readonly Issue[] {
  return listIn(lines).flatMap((line, index): readonly Issue[] => {
    const { from, to } = fieldsIn(line);
    return endIssues(from ?? fieldsIn(inGround)['from'], to, [...at, 'lines', index, 'to']);
  });
}

/** A last day lies not before its first. */
export function endIssues(from: unknown, to: unknown, path: Path): readonly Issue[] {
  const [start, last] = [dayIn(from), dayIn(to)];
  if (start === undefined || last === undefined || start <= last) return [];
  return [{ path, value: to, code: 'ends-before-start', values: { start, of: 'first-day' } }];
}
