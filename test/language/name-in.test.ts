import { describe, expect, it } from 'vitest';
import { nameIn } from '../../src/language/name-in.ts';

const SQUASH = { en: 'Zucchini', 'en-GB': 'Courgette', es: 'Calabacín', 'pt-BR': 'Abobrinha' };

const said = (locale: string, isUs = false) => nameIn(SQUASH, { locale, isUs });

describe('a name out of a table of data', () => {
  it('is that of the language, whatever its region', () => {
    expect([said('es'), said('es-MX'), said('pt-BR')]).toEqual(['Calabacín', 'Calabacín', 'Abobrinha']);
  });

  it('is the American one in the United States and the British one wherever else English is read', () => {
    expect([said('en-US', true), said('en-GB'), said('en-AU')]).toEqual(['Zucchini', 'Courgette', 'Courgette']);
  });

  it('is English where the table has no other', () => {
    expect([said('de'), said('pt-PT'), nameIn({ en: 'Tomato' }, { locale: 'en-NZ', isUs: false })]).toEqual([
      'Zucchini',
      'Zucchini',
      'Tomato',
    ]);
  });

  it('is that of a registered language first, by its English name', () => {
    const areas = { names: { Zucchini: 'Kesäkurpitsa' } };
    expect(nameIn(SQUASH, { locale: 'es', isUs: false, areas })).toBe('Kesäkurpitsa');
    expect(nameIn({ en: 'Tomato', es: 'Tomate' }, { locale: 'es', isUs: false, areas })).toBe('Tomate');
  });
});
