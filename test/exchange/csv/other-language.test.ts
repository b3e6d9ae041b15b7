/** Tables whose headings are in a registered language: what is written is read again, and English is always read. */
import Papa from 'papaparse';
import { beforeAll, describe, expect, it } from 'vitest';
import { readHeading } from '../../../src/exchange/csv/read-heading.ts';
import { seasonToCsv } from '../../../src/exchange/csv/season-to-csv.ts';
import { tableFromCsv } from '../../../src/exchange/csv/table-from-csv.ts';
import { csv } from '../../../src/language/en/csv.ts';
import { units } from '../../../src/language/en/units.ts';
import { en } from '../../../src/language/en.ts';
import { loadLanguage } from '../../../src/language/languages.ts';
import { registerLanguage } from '../../../src/language/register-language.ts';
import { plan, season } from './mixed-season.ts';

// From memory; no part of the kit.
const SPANISH = {
  ...en,
  csv: {
    ...csv,
    headings: { zone: 'Zona', planting: 'Plantación', measure: 'Medida', unit: 'Unidad', season: 'Temporada' },
    measures: { volume: 'Agua necesaria', minutes: 'Minutos de riego', rain: 'Lluvia administrada' },
    weather: {
      date: ['fecha', 'día'],
      rain: ['lluvia'],
      min: ['temperatura mínima', 'mínima'],
      max: ['temperatura máxima', 'máxima'],
    },
  },
  units: { ...units, typed: { ...units.typed, in: ['pulgada', 'pulgadas'], mm: ['mm', 'milímetros'] } },
};

const against = { plan, season, locale: 'es-MX' };

beforeAll(async () => {
  registerLanguage('es', () => SPANISH);
  await loadLanguage('es-MX');
});

describe('a table in a registered language', () => {
  it('is written with its headings and measures', () => {
    const text = seasonToCsv(season, { units: 'us', locale: 'es-MX', measures: ['volume', 'minutes', 'rain'] });
    const [header, ...rows] = Papa.parse<string[]>(text, { skipEmptyLines: true }).data;
    expect(header?.slice(0, 5)).toEqual(['Zona', 'Plantación', 'Medida', 'Unidad', '2027-04-05']);
    expect(header?.at(-1)).toBe('Temporada');
    expect(rows.slice(0, 3).map((row) => row[2])).toEqual(Object.values(SPANISH.csv.measures));
  });

  it('is read again, and of its measures the minutes alone', () => {
    const measures = ['volume', 'minutes', 'rain'] as const;
    const text = seasonToCsv(season, { units: 'us', locale: 'es-MX', measures });
    expect(tableFromCsv(text, against)).toMatchObject({ kind: 'minutes', changes: [], faults: [] });
    const changed = text.replace(/^(Beds,,Minutos de riego,min,)[^,]+/m, '$133');
    expect(tableFromCsv(changed, against)).toMatchObject({ changes: [{ zone: 'Beds', to: 33 }], faults: [] });
  });

  it('is read in English too, whoever reads it', () => {
    const text = seasonToCsv(season, { units: 'us', measures: ['volume', 'minutes', 'rain'] });
    expect(tableFromCsv(text, against)).toMatchObject({ kind: 'minutes', changes: [], faults: [] });
    expect(tableFromCsv('Date,Rain (in)\n2027-05-01,0.5\n', against)).toMatchObject({ kind: 'rain', faults: [] });
  });

  it('is no table that is known where nobody reads that language', () => {
    expect(tableFromCsv('Zona,2027-04-12\nBeds,45\n', { plan, season, locale: 'es-MX' }).kind).toBe('minutes');
    expect(tableFromCsv('Zona,2027-04-12\nBeds,45\n', { plan, season, locale: 'en' }).kind).toBeUndefined();
    expect(tableFromCsv('Fecha,Lluvia\n2027-05-01,1\n', { plan, season, locale: 'de' }).kind).toBeUndefined();
  });

  it('has weather by its headings, with and without accents, and its units', () => {
    const text = 'FECHA,Lluvia (pulgadas),minima °F,Temperatura máxima °F\n2027-05-01,0.5,50,70\n';
    expect(tableFromCsv(text, against)).toMatchObject({
      kind: 'weather',
      faults: [],
      units: { rain: 'us', min: 'us', max: 'us' },
      changes: [{ to: 0.5 }, { to: 50 }, { to: 70 }],
    });
    expect(readHeading('Lluvia (milímetros)', 'es-MX')).toMatchObject({ word: 'lluvia', unit: 'mm' });
  });
});
