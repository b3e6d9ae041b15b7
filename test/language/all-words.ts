import { en } from '../../src/language/en.ts';
import { lateWords } from '../../src/language/late-words.ts';

/** All areas of English, late ones too. */
export const allWords = Object.freeze({ ...en, ...Object.assign({}, ...Object.values(lateWords)) }) as typeof en &
  (typeof lateWords)['trace'] &
  (typeof lateWords)['traceGround'] &
  (typeof lateWords)['files'] &
  (typeof lateWords)['garden'];
