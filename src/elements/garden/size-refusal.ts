/** Why a size that was typed is not taken, in words. */
import { sizesWords } from '../../language/en/sizes.ts';
import { isBareCount } from '../../language/format/parse-size.ts';
import type { Reader } from '../../language/reader.ts';

export function sizeRefusal(text: string, reader: Reader): string {
  const say = sizesWords(reader.language);
  if (text.trim() === '') return say.missing;
  return isBareCount(text, reader) ? say.eachMissing[reader.units] : say.notRead;
}
