/**
 * Figures of days in a row as one text, as `site.years` holds them: whole numbers with a space between, `-` for a missing day. They count
 * ten-thousandths of an inch, or hundredths of a millimetre: finer than weather offices print, so that a change of units and back gives
 * every 0.01 in and every 0.01 mm as it was. New ones are written in fewer letters (`compact-days.ts`), and never change with the units.
 */
import { fromSi, toSi, type UnitSystem } from '../engine/units.ts';
import { COMPACT_MARK, COMPACT_PATTERN, figuresOfCompact } from './compact-days.ts';
import { roundForPerson } from './edits/round-for-person.ts';

/** Figures in one inch, or in one millimetre. */
export const FIGURES_IN_A_UNIT = { us: 10_000, metric: 100 } as const satisfies Record<UnitSystem, number>;

/** Most years of days that a plan holds. */
export const MOST_YEARS = 60;
export const MOST_PACKED_DAYS = MOST_YEARS * 366;

/** Most that a day can bring, mm: 1,825 is the most rain ever measured (WMO; from memory), 9 the most ETo of FAO-56 Table 2. */
export const MOST_IN_A_DAY_MM = { rain: 2000, eto: 30 } as const;

/** As many characters as the most days can have, each of six digits. */
export const MOST_PACKED_CHARACTERS = 7 * MOST_PACKED_DAYS;

/** Of the whole text, as JSON Schema has it. */
export const PACKED_PATTERN = `^(?:(-|[0-9]{1,6})( (-|[0-9]{1,6}))*|${COMPACT_PATTERN})$`;

const FIGURE = /^(?:-|[0-9]{1,6})$/;
const MISSING = '-';

/** Each figure as it is written. */
export function packedFigures(text: string): readonly string[] {
  return isCompact(text) ? figuresOfCompact(text, MOST_PACKED_DAYS + 1) : text.split(' ');
}

const isCompact = (text: string): boolean => text.startsWith(COMPACT_MARK);

/** The units that a text counts in, in a plan of such units. */
export function unitsOfPacked(text: string, units: UnitSystem): UnitSystem {
  return isCompact(text) ? 'metric' : units;
}

export function isPackedFigure(figure: string): boolean {
  return FIGURE.test(figure);
}

/** mm of each day, NaN where it is missing, of a text that holds nothing but figures. */
export function unpackedMm(text: string, ofPlan: UnitSystem): Float64Array {
  const units = unitsOfPacked(text, ofPlan);
  return Float64Array.from(packedFigures(text), (figure) =>
    figure === MISSING ? Number.NaN : toSi(Number(figure) / FIGURES_IN_A_UNIT[units], 'depth', units),
  );
}

/** The greatest figure that a day can have. */
export function mostFigure(kind: keyof typeof MOST_IN_A_DAY_MM, units: UnitSystem): number {
  return Math.floor(fromSi(MOST_IN_A_DAY_MM[kind], 'depth', units) * FIGURES_IN_A_UNIT[units] + 1e-6);
}

/** Half a hundredth of a millimetre, and a little less in ten-thousandths of an inch: so no two metric figures fall together. */
const TOLERANCE = { us: 1.96, metric: 0.5 } as const;

/** The same text in the other units, each figure as round as it can be. */
export function convertedDays(text: string, from: UnitSystem, to: UnitSystem): string {
  if (isCompact(text)) return text;
  const converted = (figure: string): string => {
    if (figure === MISSING) return figure;
    const depthMm = toSi(Number(figure) / FIGURES_IN_A_UNIT[from], 'depth', from);
    const exact = fromSi(depthMm, 'depth', to) * FIGURES_IN_A_UNIT[to];
    return String(Math.round(roundForPerson(exact, TOLERANCE[to])));
  };
  // A year has few figures that are unlike.
  const known = new Map<string, string>();
  return packedFigures(text)
    .map((figure) => {
      const before = known.get(figure);
      if (before !== undefined) return before;
      const after = converted(figure);
      known.set(figure, after);
      return after;
    })
    .join(' ');
}
