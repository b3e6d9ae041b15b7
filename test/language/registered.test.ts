import { beforeAll, describe, expect, it } from 'vitest';
import { area } from '../../src/language/area.ts';
import { planner, plannerWords } from '../../src/language/en/planner.ts';
import { traceWords } from '../../src/language/en/trace.ts';
import { weekWords } from '../../src/language/en/week.ts';
import { en } from '../../src/language/en.ts';
import { formatFor } from '../../src/language/format/format.ts';
import { BRITISH_ENGLISH, US_ENGLISH } from '../../src/language/language.ts';
import {
  isLanguageMissing,
  languageFor,
  loadLanguage,
  subscribeToLanguages,
  wantWords,
} from '../../src/language/languages.ts';
import { lateWords } from '../../src/language/late-words.ts';
import { readerFor } from '../../src/language/reader.ts';
import { registerLanguage } from '../../src/language/register-language.ts';

const plain = (text: string): string => text.replaceAll(/\s/g, ' ');

describe('a locale whose language nobody registered', () => {
  // Forms of dates and numbers: Unicode CLDR, by way of Intl.
  it.each([
    ['es', 'en-GB', '2 weeks from 5 April 2027, 1 zone, 1,234 plantings'],
    ['es-US', 'en-US', '2 weeks from April 5, 2027, 1 zone, 1,234 plantings'],
    ['ar-EG', 'en-GB', '2 weeks from 5 April 2027, 1 zone, 1,234 plantings'],
    ['en-IN', 'en-IN', '2 weeks from 5 April 2027, 1 zone, 1,234 plantings'],
  ])('is spoken to in English alone: %s', (locale, spoken, expected) => {
    const reader = readerFor(locale, 'us');
    expect(reader.locale).toBe(spoken);
    expect(isLanguageMissing(locale)).toBe(false);
    expect(plain(plannerWords(reader.language).season(formatFor(reader), 2, 20913, 1, 1234))).toBe(plain(expected));
  });

  it('gets the English of its country', () => {
    expect(languageFor('es-US').isUs).toBe(true);
    expect(languageFor('es').isUs).toBe(false);
    expect(languageFor('en-AU')).toMatchObject({ locale: 'en-AU', isUs: false });
  });
});

describe('a registered language', () => {
  let loads = 0;
  beforeAll(() => {
    registerLanguage('fi', async () => {
      loads++;
      return { ...en, planner: { ...planner, undo: 'Kumoa' } };
    });
  });

  it('is loaded when it is asked for, once, and English is spoken until it has come', async () => {
    expect(loads).toBe(0);
    expect(isLanguageMissing('fi-FI')).toBe(true);
    expect(languageFor('fi-FI')).toEqual(BRITISH_ENGLISH);
    await loadLanguage('fi-FI');
    await loadLanguage('fi');
    expect(loads).toBe(1);
    expect(isLanguageMissing('fi-FI')).toBe(false);
    expect(plannerWords(languageFor('fi-FI')).undo).toBe('Kumoa');
    expect(languageFor('fi-FI').locale).toBe('fi-FI');
  });

  it('has the numbers, dates and plurals of its own', () => {
    const reader = readerFor('fi', 'metric');
    expect(plain(formatFor(reader).day(20913, 'full'))).toBe('5. huhtikuuta 2027');
    expect(plain(formatFor(reader).number(1234.5, 1))).toBe('1 234,5');
  });

  it('may have more forms of a plural than English', async () => {
    const zones = { one: 'зона', few: 'зоны', many: 'зон', other: 'зоны' };
    registerLanguage('uk', () => en);
    await loadLanguage('uk');
    const { count } = formatFor(readerFor('uk', 'metric'));
    expect([1, 3, 5, 21, 22, 25].map((zone) => plain(count(zone, zones)))).toEqual([
      '1 зона',
      '3 зоны',
      '5 зон',
      '21 зона',
      '22 зоны',
      '25 зон',
    ]);
  });

  it('is that of the country where there is one, else of the language', async () => {
    registerLanguage('pt', () => ({ ...en, planner: { ...planner, undo: 'Anular' } }));
    registerLanguage('pt-BR', () => ({ ...en, planner: { ...planner, undo: 'Desfazer' } }));
    await Promise.all(['pt-BR', 'pt-PT'].map(loadLanguage));
    expect(plannerWords(languageFor('pt-BR')).undo).toBe('Desfazer');
    expect(plannerWords(languageFor('pt-PT')).undo).toBe('Anular');
  });

  it('is told to who asks, when it is registered, and not after', () => {
    const told: string[] = [];
    const end = subscribeToLanguages(() => told.push('told'));
    registerLanguage('it', () => en);
    end();
    registerLanguage('it', () => en);
    expect(told).toEqual(['told']);
  });

  it('says in English what it lacks, as one that was made for an earlier version does', async () => {
    const older = { planner: { undo: 'Ångra', view: { files: 'Filer' } } } as unknown as typeof en;
    registerLanguage('sv', () => older);
    const language = await loadLanguage('sv');
    expect(plannerWords(language)).toMatchObject({ undo: 'Ångra', redo: planner.redo });
    expect(plannerWords(language).view).toEqual({ ...planner.view, files: 'Filer' });
    expect(weekWords(language)).toEqual(en.week);
  });

  it('is fetched with its late words once a part of the page wants them, one and all languages', async () => {
    const trace = { ...lateWords.trace, trace: { ...lateWords.trace.trace, choose: 'Valitse' } };
    const calls: string[] = [];
    const late = {
      trace: async () => {
        calls.push('trace');
        return trace;
      },
    };
    registerLanguage('et', () => en, late);
    const before = await loadLanguage('et');
    expect([calls, isLanguageMissing('et')]).toEqual([[], false]);
    expect(before.areas).not.toHaveProperty('trace');
    wantWords('trace');
    expect(isLanguageMissing('et')).toBe(true);
    const after = await loadLanguage('et');
    expect([calls, isLanguageMissing('et')]).toEqual([['trace'], false]);
    expect(traceWords(after)).toMatchObject({ choose: 'Valitse' });
    expect(languageFor('et')).toBe(after);
    registerLanguage('lv', () => en, late);
    await loadLanguage('lv');
    expect(calls).toEqual(['trace', 'trace']);
  });

  it('takes what another registration under its tag brings, though the first comes later', async () => {
    let come: (words: typeof en) => void = () => undefined;
    registerLanguage('lt', () => new Promise<typeof en>((resolve) => (come = resolve)));
    const first = loadLanguage('lt');
    registerLanguage('lt', () => ({ ...en, planner: { ...planner, undo: 'Anuliuoti' } }));
    const second = loadLanguage('lt');
    come(en);
    await Promise.all([first, second]);
    expect(plannerWords(languageFor('lt')).undo).toBe('Anuliuoti');
  });

  it('is refused by a tag that is none, and leaves English where it does not come', async () => {
    expect(() => registerLanguage('a language', () => en)).toThrow(RangeError);
    registerLanguage('da', () => Promise.reject(new Error('offline')));
    await expect(loadLanguage('da')).rejects.toThrow('offline');
    expect(isLanguageMissing('da')).toBe(true);
    expect(languageFor('da')).toEqual(BRITISH_ENGLISH);
  });
});

describe('an area', () => {
  const words = area('none', { a: { color: 'color', water: 'water' }, list: ['a'] }, { a: { color: 'colour' } });

  it('is US English, or that with what British English says otherwise', () => {
    expect(words(US_ENGLISH).a).toEqual({ color: 'color', water: 'water' });
    expect(words(BRITISH_ENGLISH)).toEqual({ a: { color: 'colour', water: 'water' }, list: ['a'] });
  });

  it('is the same object for the same language', () => {
    const language = { locale: 'fi', isUs: false, areas: { none: { list: ['b', 'c'] } } };
    expect(words(language)).toBe(words({ ...language }));
    expect(words(language).list).toEqual(['b', 'c']);
    expect(words(BRITISH_ENGLISH)).toBe(words(BRITISH_ENGLISH));
  });
});
