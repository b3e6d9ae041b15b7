import type { LitElement } from 'lit';
import type { Season } from '../../engine/season/season.ts';
import { type Notice, plantingsOf } from '../../explain/notices/notice.ts';
import { NOTICE_KINDS, NOTICE_WEIGHTS } from '../../explain/notices/notice-kinds.ts';
import { findingNotices } from '../../explain/notices/notices-of.ts';
import { isWorthTelling } from '../../explain/notices/worth-telling.ts';
import { inSlices } from '../shared/in-slices.ts';

/** A notice in the list. */
export interface ListedNotice {
  readonly notice: Notice;
  /** By which it is known again in the next season: no two are alike. */
  readonly key: string;
  readonly index: number;
}

/**
 * So many zones are looked at in one go, by the measure of `findingNotices`: a garden of some hundred plantings, or an edit of one zone
 * in a far larger one. More would keep the page waiting.
 */
const AT_ONCE = 15_000;

const cache = new WeakMap<Season, readonly ListedNotice[]>();

interface Search {
  readonly season: Season;
  readonly ended: Promise<void>;
}

/** Looks for a season's notices once, a large garden's in slices. */
export class NoticeList {
  readonly #host: LitElement;
  #search: Search | undefined;
  #fault: { readonly error: unknown; readonly season: Season } | undefined;

  constructor(host: LitElement) {
    this.#host = host;
  }

  /** Worst first; undefined while they are being looked for, which asking begins. Throws what the search threw. */
  of(season: Season): readonly ListedNotice[] | undefined {
    if (this.#fault?.season === season) throw this.#fault.error;
    const known = cache.get(season);
    if (known !== undefined || this.#search?.season === season) return known;
    this.#search = undefined;
    const steps = findingNotices(season);
    for (let effort = 0; effort < AT_ONCE; ) {
      const step = steps.next();
      if (step.done === true) return keep(season, step.value);
      effort += step.value;
    }
    this.#search = { season, ended: new Promise((ended) => this.#goOn(season, steps, ended)) };
    return undefined;
  }

  /** Another plan, or none, is on screen: what is being looked for is given up. */
  giveUp(): void {
    this.#search = undefined;
  }

  /** Waits for a search that is going on; false where there was one to wait for. */
  async isSettled(): Promise<boolean> {
    if (this.#search === undefined) return true;
    await this.#search.ended;
    return false;
  }

  #goOn(season: Season, steps: ReturnType<typeof findingNotices>, ended: () => void): void {
    const end = () => {
      this.#search = undefined;
      this.#host.requestUpdate();
      ended();
    };
    inSlices({
      steps,
      isWanted: () => {
        const isWanted = this.#search?.season === season && this.#host.isConnected;
        if (!isWanted) ended();
        return isWanted;
      },
      onEnd: (notices) => {
        keep(season, notices);
        end();
      },
      onFault: (error) => {
        this.#fault = { error, season };
        end();
      },
    });
  }
}

function keep(season: Season, notices: readonly Notice[]): readonly ListedNotice[] {
  const list = listed(notices.filter(isWorthTelling));
  cache.set(season, list);
  return list;
}

function listed(notices: readonly Notice[]): readonly ListedNotice[] {
  const counts = new Map<string, number>();
  return notices.map((notice, index) => {
    const subject = subjectOf(notice);
    const count = (counts.get(subject) ?? 0) + 1;
    counts.set(subject, count);
    return { notice, key: `${subject} ${count}`, index };
  });
}

const subjects = new WeakMap<Notice, string>();

function subjectOf(notice: Notice): string {
  const { kind, zoneId, lineIndex } = notice;
  const subject = subjects.get(notice) ?? JSON.stringify([kind, zoneId, ...plantingsOf(notice), lineIndex]);
  subjects.set(notice, subject);
  return subject;
}

/** What a notice is about. */
export function aboutOf({ notice }: ListedNotice): 'broken' | 'wastesWater' | 'goodToKnow' {
  const { weight } = NOTICE_KINDS[notice.kind];
  if (weight === NOTICE_WEIGHTS.wastesWater) return 'wastesWater';
  return weight === NOTICE_WEIGHTS.goodToKnow ? 'goodToKnow' : 'broken';
}
