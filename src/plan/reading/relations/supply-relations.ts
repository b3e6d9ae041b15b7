/** What must agree in the supply: a source's day and its pressure, the tank's level, the days of restrictions and cuts. */
import type { UnitSystem } from '../../../engine/units.ts';
import type { Issue } from '../issue.ts';
import { fieldsIn, type Loose, listIn } from '../loose.ts';
import type { Path } from '../place.ts';
import { atMost, measureOf } from './amount-relations.ts';
import { endIssues } from './zone-relations.ts';

export function supplyRelations(supply: unknown, at: Path, units: UnitSystem | undefined): readonly Issue[] {
  const { tank, sources, restrictions, cuts } = fieldsIn(supply);
  const { start, capacity } = fieldsIn(tank);
  return [
    ...sourceIssues(listIn(sources).map(fieldsIn), [...at, 'sources']),
    ...listIn(restrictions).flatMap((restriction, index) => daysIssues(restriction, [...at, 'restrictions', index])),
    ...listIn(cuts).flatMap((cut, index) => cutIssues(cut, [...at, 'cuts', index])),
    ...atMost(start, capacity, {
      path: [...at, 'tank', 'start'],
      of: 'capacity',
      measure: measureOf('volume', units),
    }),
  ];
}

function sourceIssues(sources: readonly Loose[], at: Path): readonly Issue[] {
  const days = sources.map(({ from }) => from);
  return sources.flatMap(({ from, pressure, waterHeight }, index): readonly Issue[] => {
    const earlier = days.indexOf(from);
    const values = { other: earlier + 1, isFirst: from === undefined };
    const sameDay: Issue = { path: [...at, index, 'from'], value: from, code: 'source-same-day', values };
    const path = [...at, index, 'waterHeight'];
    const twice: Issue = { path, value: waterHeight, code: 'pressure-twice', values: {} };
    const isTwice = pressure !== undefined && waterHeight !== undefined;
    return [...(earlier === index ? [] : [sameDay]), ...(isTwice ? [twice] : [])];
  });
}

function daysIssues(part: unknown, at: Path): readonly Issue[] {
  const { from, to } = fieldsIn(part);
  return endIssues(from, to, [...at, 'to']);
}

function cutIssues(cut: unknown, at: Path): readonly Issue[] {
  const { share, perWeek } = fieldsIn(cut);
  const amount: Issue = { path: [...at, 'share'], value: share, code: 'cut-amount', values: {} };
  return [...daysIssues(cut, at), ...((share === undefined) === (perWeek === undefined) ? [amount] : [])];
}
