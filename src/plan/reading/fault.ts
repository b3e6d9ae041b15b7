/** One thing that is wrong with a plan or an entry, in words a gardener reads. */
export interface Fault {
  /** Place in the document: `zones.2.plantings.0.extent.area`; empty for the whole. */
  readonly path: string;
  /** Which kind of fault it is, where it is none of a value in the document. */
  readonly code?: string;
  /** The same place in words: `Zone “Beds”, planting “Tomatoes”: area`. */
  readonly where: string;
  /** What stands there, shortened. */
  readonly value: string;
  /** What was expected there: `a number from 0.11 to 1080000 ft²`. */
  readonly expected: string;
}
