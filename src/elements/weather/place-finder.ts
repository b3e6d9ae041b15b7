import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { FoundPlace, findPlaces } from '../../exchange/places/find-places.ts';
import { loadPlaces } from '../../exchange/places/load-places.ts';
import type { Places } from '../../exchange/places/unpack-places.ts';
import { fetchPart } from '../shared/fetch-part.ts';
import { sliced } from './slices.ts';

export type FinderState =
  | { readonly step: 'none' | 'loading' | 'not-fetched' }
  | { readonly step: 'found'; readonly places: readonly FoundPlace[] };

interface AllPlaces {
  readonly places: Places;
  readonly findPlaces: typeof findPlaces;
}

const PRESSES = ['pointerdown', 'pointerup', 'pointercancel'] as const;

let all: Promise<AllPlaces | undefined> | undefined;

/** Fetched once for all finders of a page, when somebody begins to type. */
async function allPlaces(): Promise<AllPlaces | undefined> {
  const part = await fetchPart(loadPlaces);
  const places = part && (await sliced(part.placesSteps(part.text), () => true));
  return places && { places, findPlaces: part.findPlaces };
}

/** Looks places up by what is typed. */
export class PlaceFinder implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #turn = 0;
  #isLeft = false;
  #isPressed = false;
  /** What stands in its field, and goes with nothing but a choice. */
  typed = '';
  state: FinderState = { step: 'none' };

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    for (const type of PRESSES) addEventListener(type, this.#onPress, true);
  }

  hostDisconnected(): void {
    for (const type of PRESSES) removeEventListener(type, this.#onPress, true);
  }

  readonly #onPress = ({ type }: Event): void => {
    this.#isPressed = type === 'pointerdown';
  };

  async find(typed: string, countryName: (code: string) => string): Promise<void> {
    const turn = ++this.#turn;
    this.typed = typed;
    this.#isLeft = false;
    if (typed.trim() === '') return this.#show({ step: 'none' });
    if (this.state.step !== 'found') this.#show({ step: 'loading' });
    all ??= allPlaces();
    const there = await all;
    if (there === undefined) all = undefined;
    if (turn !== this.#turn) return;
    this.#show(
      there === undefined
        ? { step: 'not-fetched' }
        : { step: 'found', places: there.findPlaces(there.places, typed, { countryName }) },
    );
  }

  /** Whether its field was left with a name of which no place was picked. */
  get isUnpicked(): boolean {
    return this.#isLeft && this.typed.trim() !== '';
  }

  /** The field is left. Said once what it was left for has been pressed: earlier, words that come would move it away. */
  leave(): void {
    const turn = this.#turn;
    const left = () => {
      if (this.#isPressed) addEventListener('pointerup', () => setTimeout(left), { once: true });
      else if (turn === this.#turn) {
        this.#isLeft = true;
        this.#host.requestUpdate();
      }
    };
    setTimeout(left);
  }

  clear(): void {
    this.#turn += 1;
    this.typed = '';
    this.#show({ step: 'none' });
  }

  #show(state: FinderState): void {
    this.state = state;
    this.#host.requestUpdate();
  }
}
