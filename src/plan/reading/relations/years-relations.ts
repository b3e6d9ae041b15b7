/** Real seasons by day: texts of figures that a day can have, as many of ETo as of rain, and no day twice. */
import type { DayNumber } from '../../../engine/calendar.ts';
import type { UnitSystem } from '../../../engine/units.ts';
import {
  isPackedFigure,
  MOST_IN_A_DAY_MM,
  MOST_PACKED_CHARACTERS,
  MOST_PACKED_DAYS,
  MOST_YEARS,
  mostFigure,
  packedFigures,
  unitsOfPacked,
} from '../../packed-days.ts';
import type { Issue } from '../issue.ts';
import { dayIn, fieldsIn, listIn, textIn } from '../loose.ts';
import type { Path } from '../place.ts';

export function yearsRelations(years: unknown, at: Path, units: UnitSystem | undefined): readonly Issue[] {
  const { stretches } = fieldsIn(years);
  const days = listIn(stretches).map(daysOf);
  const count = days.reduce((sum, { count }) => sum + count, 0);
  const there = [...at, 'stretches'];
  const tooMany: readonly Issue[] =
    count > MOST_PACKED_DAYS
      ? [{ path: there, value: stretches, code: 'too-many-years', values: { most: MOST_YEARS } }]
      : [];
  return [
    ...tooMany,
    ...listIn(stretches).flatMap((stretch, index) => stretchIssues(stretch, [...there, index], units)),
    ...overlapIssues(days, there),
  ];
}

interface Days {
  readonly from: unknown;
  readonly first: DayNumber | undefined;
  readonly count: number;
}

function daysOf(stretch: unknown): Days {
  const { from, rain } = fieldsIn(stretch);
  return { from, first: dayIn(from), count: figuresIn(rain).length };
}

/** None where there is no text, or more of it than the schema takes. */
function figuresIn(text: unknown): readonly string[] {
  const written = textIn(text) ?? '';
  return written === '' || written.length > MOST_PACKED_CHARACTERS ? [] : packedFigures(written);
}

function stretchIssues(stretch: unknown, at: Path, units: UnitSystem | undefined): readonly Issue[] {
  const { rain, eto } = fieldsIn(stretch);
  const [ofRain, ofEto] = [figuresIn(rain), figuresIn(eto)];
  const issues = [
    ...figureIssues(ofRain, [...at, 'rain'], 'rain', unitsOfText(rain, units)),
    ...figureIssues(ofEto, [...at, 'eto'], 'eto', unitsOfText(eto, units)),
  ];
  if (issues.length > 0 || ofRain.length === ofEto.length || ofRain.length === 0 || ofEto.length === 0) return issues;
  return [{ path: [...at, 'eto'], value: ofEto.length, code: 'unequal-days', values: { rain: ofRain.length } }];
}

function unitsOfText(text: unknown, units: UnitSystem | undefined): UnitSystem | undefined {
  return units && unitsOfPacked(textIn(text) ?? '', units);
}

/** The first figure that is none, else the first that no day can have. */
function figureIssues(
  figures: readonly string[],
  path: Path,
  kind: keyof typeof MOST_IN_A_DAY_MM,
  units: UnitSystem | undefined,
): readonly Issue[] {
  const wrong = figures.findIndex((figure) => !isPackedFigure(figure));
  if (wrong >= 0) {
    return [{ path, value: figures[wrong], code: 'daily-figures', values: { number: wrong + 1 } }];
  }
  if (units === undefined) return [];
  const most = mostFigure(kind, units);
  const great = figures.findIndex((figure) => Number(figure) > most);
  if (great < 0) return [];
  const values = { number: great + 1, most, mostMm: MOST_IN_A_DAY_MM[kind] };
  return [{ path, value: Number(figures[great]), code: 'daily-figure-too-great', values }];
}

function overlapIssues(stretches: readonly Days[], at: Path): readonly Issue[] {
  const inOrder = stretches
    .flatMap(({ from, first, count }, index) => (first === undefined ? [] : [{ from, first, count, index }]))
    .sort((left, right) => left.first - right.first);
  let before = inOrder[0];
  return inOrder.slice(1).flatMap((stretch): readonly Issue[] => {
    const earlier = before;
    if (earlier === undefined) return [];
    if (stretch.first + stretch.count > earlier.first + earlier.count) before = stretch;
    if (stretch.first >= earlier.first + earlier.count) return [];
    const values = { other: earlier.index + 1 };
    return [{ path: [...at, stretch.index, 'from'], value: stretch.from, code: 'stretch-overlaps', values }];
  });
}
