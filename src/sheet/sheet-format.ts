/** How the sheet writes figures: in the plan's unit, in the reader's locale, short for a cell and in words for a description. */
import { fromSi, type UnitSystem, unitOf } from '../engine/units.ts';

export interface SheetFormat {
  readonly units: UnitSystem;
  readonly locale: string;
  /** Litres as the plan's volume: `142`, `3.4`. */
  volume(litres: number): string;
  volumeWords(litres: number): string;
  /** Minutes: `38`, `7.5`. */
  minutes(minutes: number): string;
  minutesWords(minutes: number): string;
  /** Millimetres as the plan's depth: `0.12`. */
  depth(mm: number): string;
  depthWords(mm: number): string;
  /** Whether a depth is written as nought. */
  isNoDepth(mm: number): boolean;
  /** A share of one: `96 %`. */
  share(share: number): string;
  days(days: number): string;
  /** Symbols that stand beside a number: `gal`, `in`. */
  readonly volumeUnit: string;
  readonly depthUnit: string;
}

/** Binds a number to its unit, so that a line never breaks between them. */
export const NO_BREAK = '\u00a0';

/** Beyond ten times the need a ratio says no more than that it is beyond. */
const MOST_PERCENT = 999;

export function sheetFormat(units: UnitSystem, locale: string): SheetFormat {
  const plain = [0, 1, 2].map((places) => numberFormat(locale, { maximumFractionDigits: places }));
  const depthPlaces = units === 'us' ? 2 : 1;
  const depth = numberFormat(locale, { minimumFractionDigits: depthPlaces, maximumFractionDigits: depthPlaces });
  const inWords = (unit: string, maximumFractionDigits: number) =>
    numberFormat(locale, { style: 'unit', unit, unitDisplay: 'long', maximumFractionDigits });
  const volumeName = units === 'us' ? 'gallon' : 'liter';
  const depthName = units === 'us' ? 'inch' : 'millimeter';
  const words = {
    volume: [inWords(volumeName, 0), inWords(volumeName, 1)],
    minutes: [inWords('minute', 0), inWords('minute', 1)],
    depth: inWords(depthName, depthPlaces),
    days: inWords('day', 0),
  };
  // Below ten one decimal; what would round to ten is written as ten.
  const places = (value: number) => (Math.abs(value) < 9.95 ? 1 : 0);
  const pick = (formats: readonly Intl.NumberFormat[], value: number) =>
    (formats[places(value)] as Intl.NumberFormat).format(value);
  const volumeOf = (litres: number) => fromSi(litres, 'volume', units);
  const depthOf = (mm: number) => fromSi(mm, 'depth', units);
  return {
    units,
    locale,
    volume: (litres) => pick(plain, volumeOf(litres)),
    volumeWords: (litres) => pick(words.volume, volumeOf(litres)),
    minutes: (minutes) => pick(plain, minutes),
    minutesWords: (minutes) => pick(words.minutes, minutes),
    depth: (mm) => depth.format(depthOf(mm)),
    depthWords: (mm) => words.depth.format(depthOf(mm)),
    isNoDepth: (mm) => Math.abs(depthOf(mm)) < 0.5 * 10 ** -depthPlaces,
    share: (share) => {
      const percent = Math.min(share * 100, MOST_PERCENT);
      const more = percent < share * 100 ? '>' : '';
      return `${more}${(plain[0] as Intl.NumberFormat).format(percent)}${NO_BREAK}%`;
    },
    days: (days) => words.days.format(days),
    volumeUnit: unitOf('volume', units).name,
    depthUnit: unitOf('depth', units).name,
  };
}

function numberFormat(locale: string, options: Intl.NumberFormatOptions): Intl.NumberFormat {
  return new Intl.NumberFormat(locale, { signDisplay: 'negative', ...options });
}
