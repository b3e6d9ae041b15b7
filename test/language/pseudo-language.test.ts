import { expect, it } from 'vitest';
import { formatFor } from '../../src/language/format/format.ts';
import { loadLanguage } from '../../src/language/languages.ts';
import { readerFor } from '../../src/language/reader.ts';
import { registerLanguage } from '../../src/language/register-language.ts';
import { allWords } from './all-words.ts';
import { functionsIn } from './dropped-values.ts';
import { CLOSE, OPEN, PLAIN_LETTER, pseudoLanguage, pseudoText } from './pseudo-language.ts';

const pseudo = pseudoLanguage(allWords);
registerLanguage('fi', () => pseudo);
await loadLanguage('fi');
const format = formatFor(readerFor('fi', 'metric'));

it('has accents on every letter, is a third longer and stands in brackets', () => {
  expect(pseudoText('All zones')).toBe('⟦Áľľ žóñéš~~~⟧');
  expect(pseudoText('')).toBe('');
  expect(pseudoText('abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ')).not.toMatch(PLAIN_LETTER);
});

it('leaves what a message is given as it is, and says all else in its way', () => {
  expect(pseudo.week.today.done('Beds')).toMatch(/^⟦Ďóñé: Beds~+⟧$/);
  expect(pseudo.week.shutOff.openOn(format, 20913, 0b101).replaceAll(/\s/g, ' ')).toMatch(/^⟦óṗéñ ma ja ke~+⟧$/);
  expect(pseudo.planner.refused(format, 2).replaceAll(/\s/g, ' ')).toContain('2 ťȟíñǧš');
});

it('gives no message away: all that it makes begins and ends with a bracket', () => {
  const texts = [pseudo.planner.undo, pseudo.week.before(format, 20913), pseudo.cautions.checkFirst(format, ['tank'])];
  for (const text of texts) expect([text.at(0), text.at(-1)]).toEqual([OPEN, CLOSE]);
});

it('has all messages that English has', () => {
  expect(functionsIn(pseudo).map(([path]) => path)).toEqual(functionsIn(allWords).map(([path]) => path));
});
