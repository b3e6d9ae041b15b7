import { fromSi, type UnitSystem } from '../../../engine/units.ts';
import { MOST_IN_A_DAY_MM } from '../../../plan/packed-days.ts';
import { boundsOf } from '../../../plan/schema/quantity.ts';
import { isStretchEnd } from '../../csv/stretch.ts';
import { areMisprints } from '../misread.ts';

const SYSTEMS: readonly UnitSystem[] = ['us', 'metric'];

/**
 * The only unit system in which a file's figures are physically possible: a summer of 71 degrees is none of °C. Undefined where both
 * are, or neither. `element`: TMAX, TMIN or PRCP; others do not count. With pauses.
 */
export function* unitsBySize(
  figures: Iterable<{ readonly element: string; readonly text: string }>,
): Generator<void, UnitSystem | undefined> {
  const bounds = SYSTEMS.map((system) => ({
    PRCP: [0, fromSi(MOST_IN_A_DAY_MM.rain, 'depth', system)] as const,
    TMAX: boundsOf('temperature', system),
    TMIN: boundsOf('temperature', system),
  }));
  const none = () => ({ PRCP: 0, TMAX: 0, TMIN: 0 });
  const count = none();
  const impossible = SYSTEMS.map(none);
  let seen = 0;
  for (const { element, text } of figures) {
    if (isStretchEnd(seen++)) yield;
    if (text === '' || !isCounted(element)) continue;
    count[element]++;
    const value = Number(text);
    bounds.forEach(({ [element]: [low, high] }, at) => {
      if (value < low || value > high) (impossible[at] as Counts)[element]++;
    });
  }
  const possible = SYSTEMS.filter((_, at) =>
    ELEMENTS.every((element) => areMisprints((impossible[at] as Counts)[element], count[element])),
  );
  return possible.length === 1 ? possible[0] : undefined;
}

const ELEMENTS = ['PRCP', 'TMAX', 'TMIN'] as const;
type Counts = Record<(typeof ELEMENTS)[number], number>;

const isCounted = (element: string): element is (typeof ELEMENTS)[number] =>
  (ELEMENTS as readonly string[]).includes(element);
