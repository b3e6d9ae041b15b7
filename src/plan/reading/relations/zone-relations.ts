/** What must agree inside one zone: the rule's planting, the days in the ground, the days of the lines. */

import { CROP_IDS } from '../../../engine/plants/crops.data.ts';
import { findCrop } from '../../../engine/plants/find-crop.ts';
import { dateInWords } from '../../words/day-words.ts';
import type { Finding, Path } from '../finding.ts';
import { dayIn, fieldsIn, type Loose, listIn, textIn } from '../loose.ts';

/** `valid`: plantings known to be without fault. */
export function zoneRelations(zone: unknown, at: Path, valid: ReadonlySet<unknown>): readonly Finding[] {
  const { rule, plantings } = fieldsIn(zone);
  const parts = listIn(plantings).map(fieldsIn);
  return [
    ...ruleFindings(fieldsIn(rule), parts, at),
    ...parts.flatMap((planting, place) => {
      if (valid.has(planting)) return [];
      const there = [...at, 'plantings', place];
      return [...groundFindings(planting, there), ...lineFindings(planting, there)];
    }),
  ];
}

function ruleFindings(rule: Loose, plantings: readonly Loose[], at: Path): readonly Finding[] {
  const named = rule['kind'] === 'planting' ? textIn(rule['planting']) : undefined;
  if (named === undefined || plantings.some(({ id }) => id === named)) return [];
  return [{ path: [...at, 'rule', 'planting'], value: named, expected: 'the id of a planting of this zone' }];
}

function groundFindings({ inGround, need }: Loose, at: Path): readonly Finding[] {
  const { from, to } = fieldsIn(inGround);
  const last = dayIn(to);
  const first = dayIn(from);
  const start = first ?? annualPlanting(fieldsIn(need));
  if (last === undefined || start === undefined || start <= last) return [];
  const what = first === undefined ? 'the planting day' : 'the first day';
  return [{ path: [...at, 'inGround', 'to'], value: to, expected: `a day not before ${what}, ${dateInWords(start)}` }];
}

/** An annual crop's planting day is its first in the ground unless the plan says otherwise. */
function annualPlanting({ kind, crop, plantedOn }: Loose) {
  const known = CROP_IDS.find((id) => id === crop);
  return kind === 'crop' && known !== undefined && !findCrop(known).perennial ? dayIn(plantedOn) : undefined;
}

/** Two lines that lie from the same day cannot follow one another. */
function lineFindings({ lines }: Loose, at: Path): readonly Finding[] {
  const days = listIn(lines).map((line) => fieldsIn(line)['from']);
  return days.flatMap((from, place): readonly Finding[] => {
    const earlier = days.indexOf(from);
    if (earlier === place) return [];
    const expected = `a day of its own: line ${earlier + 1} lies from ${from === undefined ? 'the first day' : 'that day'} too`;
    return [{ path: [...at, 'lines', place, 'from'], value: from, expected }];
  });
}
