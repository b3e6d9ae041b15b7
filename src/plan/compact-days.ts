/**
 * The same figures of days in a row in fewer letters: hundredths of a millimetre, whatever the plan's units. Behind `~` stand digits of
 * 64, the signs of ASCII from # to c without the backslash. A first digit below 48 makes a number with the one behind it, in base 64; 48
 * is followed by three that do. 49 and a digit are one day of nothing and as many more, 50 is a missing day.
 */

export const COMPACT_MARK = '~';

/** Of a compact text, as JSON Schema has it. */
export const COMPACT_PATTERN = '~[#-\\[\\]-c]+';

/** The first of the signs, and the last before the backslash, which JSON would double. */
export const FIRST_SIGN = 35;
export const LAST_BEFORE_BACKSLASH = 91;

export const LONG = 48;
export const ZEROS = 49;
export const MISSING = 50;

/** Each figure as it would be written at length; `NaN` where one cannot be read, and little more than `most` of them. */
export function figuresOfCompact(text: string, most: number): readonly string[] {
  const found: string[] = [];
  let at = COMPACT_MARK.length;
  const next = (): number => {
    const code = text.charCodeAt(at++);
    const digit = code - FIRST_SIGN - Number(code > LAST_BEFORE_BACKSLASH);
    return digit >= 0 && digit < 64 ? digit : Number.NaN;
  };
  while (at < text.length && found.length < most) {
    const digit = next();
    if (digit === MISSING) found.push('-');
    else if (digit === ZEROS) found.push(...new Array<string>(next() + 1 || 0).fill('0'));
    else found.push(String(digit < LONG ? 64 * digit + next() : (64 * next() + next()) * 64 + next()));
  }
  return found;
}
