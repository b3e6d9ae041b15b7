/** What a name is made of: something that can be seen, and no sign that a table, a file or a screen takes for more than a letter. */

/** Controls (C0, DEL, C1: tabs and line breaks among them) and the line and paragraph separators, as in a pattern's brackets. */
const CONTROLS = '\\u0000-\\u001f\\u007f-\\u009f\\u2028\\u2029';

/**
 * What shows as nothing: blanks, and what Unicode calls default ignorable (zero-width signs, marks of direction, fillers, variation
 * selectors, tags), with the blank of Braille.
 */
const UNSEEN =
  '\\s\\u00ad\\u034f\\u061c\\u115f\\u1160\\u17b4\\u17b5\\u180b-\\u180f\\u200b-\\u200f\\u202a-\\u202e\\u2060-\\u206f\\u2800\\u3164\\ufe00-\\ufe0f\\ufeff\\uffa0\\ufff0-\\ufffb';

/** Signs above U+FFFF that show as nothing, as pairs of UTF-16: controls of shorthand and of music, tags and further selectors. */
const UNSEEN_PAIR = '(?:\\ud82f[\\udca0-\\udca3]|\\ud834[\\udd73-\\udd7a]|[\\udb40-\\udb43][\\udc00-\\udfff])';

/** Without flags, so that JSON Schema says the same. */
export const NAME_PATTERN = new RegExp(
  `^(?:[${UNSEEN}]|${UNSEEN_PAIR})*(?!${UNSEEN_PAIR})[^${UNSEEN}${CONTROLS}][^${CONTROLS}]*$`,
);

const CONTROL = new RegExp(`[${CONTROLS}]`);
const BLANKS_AND_CONTROLS = new RegExp(`[\\s${CONTROLS}]+`, 'g');

/** The same text without controls, each run of them one blank, and without blanks at its ends. */
export function oneLine(text: string): string {
  return text.replaceAll(BLANKS_AND_CONTROLS, (run) => (CONTROL.test(run) ? ' ' : run)).trim();
}

/** The name that a text would be: in one line, and empty where nothing of it shows. */
export function cleanName(text: string): string {
  const clean = oneLine(text);
  return NAME_PATTERN.test(clean) ? clean : '';
}
