/** What a calendar entry is known by, from one file of a plan to the next. */

export interface EventIdentity {
  /** Id of the zone. */
  readonly zone: string;
  /** ISO. */
  readonly day: string;
  readonly kind: 'run' | 'turn';
}

export type UidOf = (event: EventIdentity) => string;

/** `plan`: its identity. Ids unlike those of any plan of another, of another zone or day; the same whenever they are asked for. */
export function eventUids(plan: string): UidOf {
  const hash = hashOf(plan);
  return ({ zone, day, kind }) => `${day}-${kind}-${zone}-${hash}@runnel`;
}

/** 64 bits of a text, FNV-1a (Fowler, Noll and Vo; IETF draft-eastlake-fnv) over its UTF-16 code units, low byte first. */
function hashOf(text: string): string {
  let hash = 0xcbf29ce484222325n;
  for (let at = 0; at < text.length; at += 1) {
    const unit = text.charCodeAt(at);
    for (const octet of [unit & 0xff, unit >> 8]) {
      hash = BigInt.asUintN(64, (hash ^ BigInt(octet)) * 0x100000001b3n);
    }
  }
  return hash.toString(16).padStart(16, '0');
}
