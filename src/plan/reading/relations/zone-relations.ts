/** What must agree inside one zone: the rule's planting, the days in the ground, the days of the lines. */

import { CROP_IDS } from '../../../engine/plants/crops.data.ts';
import { findCrop } from '../../../engine/plants/find-crop.ts';
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
  const known = CROP_IDS.find((id) => id === crop);
  return kind === 'crop' && known !== undefined && !findCrop(known).perennial ? dayIn(plantedOn) : undefined;
}

/** Two lines that lie from the same day cannot follow one another. */
function lineIssues({ lines }: Loose, at: Path): readonly Issue[] {
  const days = listIn(lines).map((line) => fieldsIn(line)['from']);
  return days.flatMap((from, index): readonly Issue[] => {
    const earlier = days.indexOf(from);
    if (earlier === index) return [];
    const values = { other: earlier + 1, isFirst: from === undefined };
    return [{ path: [...at, 'lines', index, 'from'], value: from, code: 'line-same-day', values }];
  });
}
