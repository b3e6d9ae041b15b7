/** Plants by common or botanical name, as people type them: wrong letters, plurals, the beginning of a word. */
import { comparable } from './comparable.ts';
import { editDistance } from './edit-distance.ts';
import type { ListedPlant } from './plant-list.ts';
import { KIND_WORDS } from './plants.data.ts';

export interface FoundPlant {
  readonly plant: ListedPlant;
  /** The name of it that fits what was typed. */
  readonly as: string;
  /** Whether the whole of the name was typed. */
  readonly isWhole: boolean;
}

/**
 * How far a name is from what was typed: the whole of it, its first words, later words of it, the beginning of its first word, of a
 * later one; a wrong letter costs more. Between words and beginnings stands more than another and longer name can cost.
 */
const COSTS = { whole: 0, firstWords: 1, words: 1.5, beginning: 3, wordBeginning: 4, letter: 3 } as const;
/** Another name than the one that is shown. */
const OTHER_NAME = 0.3;
/** What was typed but for words that say what kind of plant it is: a hedge of box. */
const WITHOUT_KIND = 0.5;
/** Of two that fit alike the shorter name is meant. */
const A_LETTER_LONGER = 0.01;

/** The plants that fit best; none for an empty text. */
export function findPlants(list: readonly ListedPlant[], typed: string, most = 8): readonly FoundPlant[] {
  const wanted = comparable(typed);
  if (wanted === '') return [];
  const bare = withoutKind(wanted);
  const found: (FoundPlant & { readonly cost: number })[] = [];
  for (const plant of list) {
    const costs = plant.folded.map(
      (name, index) =>
        Math.min(costOf(name, wanted), bare === wanted ? Number.POSITIVE_INFINITY : costOf(name, bare) + WITHOUT_KIND) +
        (index === 0 ? 0 : OTHER_NAME),
    );
    const cost = Math.min(...costs);
    if (!Number.isFinite(cost)) continue;
    const at = costs.indexOf(cost);
    const as = plant.names[at] ?? (plant.type === 'plant' ? plant.botanical : (plant.names[0] ?? ''));
    found.push({ plant, as, isWhole: plant.folded.includes(wanted), cost });
  }
  return found
    .sort((one, other) => one.cost - other.cost)
    .slice(0, most)
    .map(({ cost: _, ...each }) => each);
}

const KINDS = new Set(KIND_WORDS.en.split(' '));

/** The whole of it where nothing else is left. */
const withoutKind = (wanted: string): string =>
  wanted
    .split(' ')
    .filter((word) => !KINDS.has(word))
    .join(' ') || wanted;

function costOf(name: string, wanted: string): number {
  const longer = A_LETTER_LONGER * Math.abs(name.length - wanted.length);
  if (name === wanted) return COSTS.whole;
  const fit = fitOf(name, wanted);
  if (fit !== undefined) return COSTS[fit] + longer;
  const words = name.split(' ');
  const most = wrongLetters(wanted);
  if (most === 0) return Number.POSITIVE_INFINITY;
  let wrong = most + 1;
  for (const part of new Set([name, name.slice(0, wanted.length), ...words])) {
    wrong = Math.min(wrong, editDistance(part, wanted, most));
  }
  if (words.length > 1 && wrong > most) wrong = wordByWord(words, wanted, most);
  return wrong > most ? Number.POSITIVE_INFINITY : COSTS.letter * wrong + COSTS.beginning + longer;
}

/** How what was typed stands in a name letter by letter: pepper is a word of "sweet pepper", and a mere beginning of peppermint. */
function fitOf(name: string, wanted: string): Exclude<keyof typeof COSTS, 'whole' | 'letter'> | undefined {
  if (name.startsWith(`${wanted} `)) return 'firstWords';
  if (` ${name} `.includes(` ${wanted} `)) return 'words';
  if (name.startsWith(wanted)) return 'beginning';
  return name.includes(` ${wanted}`) ? 'wordBeginning' : undefined;
}

/** Each word that was typed against the word of the name that is nearest: they may come in any order. */
function wordByWord(words: readonly string[], wanted: string, most: number): number {
  const typed = wanted.split(' ');
  if (typed.length === 1) return most + 1;
  let sum = 0;
  for (const word of typed) {
    sum += Math.min(...words.map((each) => editDistance(each, word, most)));
    if (sum > most) break;
  }
  return sum;
}

/** So many letters may be wrong in a text of that length. */
function wrongLetters({ length }: string): number {
  if (length < 4) return 0;
  return length < 6 ? 1 : length < 9 ? 2 : 3;
}
