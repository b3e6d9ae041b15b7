/** What the fields of a form have, in few words: told as they are drawn, for the summary of what they are folded into. */
import { gardenWords } from '../../language/en/garden.ts';
import type { Format } from '../../language/format/format.ts';
import { withUnit } from '../../language/format/quantity.ts';

/** A summary is short. */
const MOST_FACTS = 3;

/** A field by its label, and what stands in it; without one, what it has says enough. */
export interface FieldFact {
  readonly label?: string | undefined;
  readonly value: string;
}

export class FieldFacts {
  #told: FieldFact[] | undefined;

  /** Called by each field; a value that is nothing is not told. */
  tell(value: string | false | undefined, label?: string): void {
    if (value) this.#told?.push({ label, value });
  }

  /** What `draw` gives, and what its fields told; what is folded within them tells of itself alone. */
  of<Drawn>(draw: () => Drawn): { readonly drawn: Drawn; readonly told: readonly FieldFact[] } {
    const around = this.#told;
    const told: FieldFact[] = [];
    this.#told = told;
    const drawn = draw();
    this.#told = around;
    return { drawn, told };
  }
}

/** `Timer step: 5 min; Starts a day: 2`, or that nothing is set. */
export function factsText(told: readonly FieldFact[], { reader }: Format): string {
  const say = gardenWords(reader.language).folded;
  const texts = told.map(({ label, value }) => (label === undefined ? value : say.fact(label, value)));
  return texts.length === 0 ? say.nothing : say.facts(texts.slice(0, MOST_FACTS), texts.length > MOST_FACTS);
}

/** A number with the unit of its field; one that says from where to where it goes is none. */
export const numberText = (number: string, unit = ''): string =>
  /^[%°]/.test(unit) ? number + unit : withUnit(number, /\d/.test(unit) ? '' : unit);
