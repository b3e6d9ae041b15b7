import { functionsIn, markedTexts, withoutMarks } from './dropped-values.ts';
import { SAMPLES } from './message-samples.ts';

/** A text of a language, with the path of its message. */
export interface PathText {
  readonly path: string;
  readonly text: string;
}

/** All that a tree of words says: its texts as they are, its functions with their values left out. */
export function textsIn(words: object, path = ''): readonly PathText[] {
  const made = functionsIn(words, path).map(([at, message]) => ({
    path: at,
    text: withoutMarks(markedTexts(message, SAMPLES[at]).join('\n')),
  }));
  return [...stringsIn(words, path), ...made];
}

function stringsIn(words: object, path: string): readonly PathText[] {
  return Object.entries(words).flatMap(([key, value]) => {
    const at = path === '' ? key : `${path}.${key}`;
    if (typeof value === 'string') return [{ path: at, text: value }];
    return typeof value === 'object' && value !== null ? stringsIn(value, at) : [];
  });
}
