/** What a bench hands in, one line of its table. Medians in milliseconds. */
export interface Outcome {
  readonly name: string;
  readonly ours_ms: number;
  readonly peer_ms: number | null;
  readonly limit_ms: number | null;
  /** The peer's time over ours; without a peer, ours over the limit's. */
  readonly ratio: number | null;
  readonly asked?: Asked | undefined;
  /** Where it is no time that was measured, the figures are in this instead of milliseconds. */
  readonly unit?: 'MiB';
}

/** What ought to hold. */
export interface Asked {
  /** The peer takes at least so many times as long as ours. */
  readonly peerOverOurs?: number;
  /** Ours takes at most so many times as long as the limit. */
  readonly oursOverLimit?: number;
  /** Ours takes at most so long. */
  readonly oursMs?: number;
}

/** Benches of one subject. */
export interface Suite {
  readonly name: string;
  /** One after another, each measured when it is asked for. */
  outcomes(): Iterable<Outcome> | AsyncIterable<Outcome>;
}

export interface Times {
  readonly ours: number;
  readonly peer: number | null;
  readonly limit: number | null;
}

export function outcome(name: string, { ours, peer, limit }: Times, asked?: Asked): Outcome {
  const overLimit = limit === null ? null : ours / limit;
  const ratio = peer === null ? overLimit : peer / ours;
  return { name, ours_ms: ours, peer_ms: peer, limit_ms: limit, ratio, asked };
}

/** Whether what was asked holds; undefined where nothing was. */
export function isMet({ ours_ms: ours, peer_ms: peer, limit_ms: limit, asked }: Outcome): boolean | undefined {
  if (asked === undefined) return undefined;
  const { peerOverOurs, oursOverLimit, oursMs } = asked;
  const beatsPeer = peerOverOurs === undefined || (peer !== null && peer >= peerOverOurs * ours);
  const nearLimit = oursOverLimit === undefined || (limit !== null && ours <= oursOverLimit * limit);
  return beatsPeer && nearLimit && (oursMs === undefined || ours <= oursMs);
}

/** An outcome as a line of latest.json. What is no time stands in fields of its own. */
export function lineOf({ name, ours_ms: ours, peer_ms: peer, limit_ms: limit, ratio, unit }: Outcome): object {
  if (unit === undefined) return { name, ours_ms: ours, peer_ms: peer, limit_ms: limit, ratio };
  return {
    name,
    ours_ms: null,
    peer_ms: null,
    limit_ms: null,
    ratio,
    ours_mib: ours,
    peer_mib: peer,
    limit_mib: limit,
  };
}
