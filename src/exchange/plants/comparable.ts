import { foldName } from '../places/fold-name.ts';

/** A name as names of plants are compared: folded, each word as one plant is called (cherries and cherry, roses and rose). */
export function comparable(name: string): string {
  return foldName(name).split(' ').map(singular).join(' ');
}

function singular(word: string): string {
  if (word.length < 4) return word;
  return word
    .replace(/ies$/, 'y')
    .replace(/oes$/, 'o')
    .replace(/(sh|ch|x|ss)es$/, '$1')
    .replace(/([^s])s$/, '$1');
}
