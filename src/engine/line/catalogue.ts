import type { Emitter } from './emitter.ts';

/** Where a value of the catalogue comes from, in words. */
export type Origin = string;

/** Tubing of the trade by its inside diameter. */
export interface Tubing {
  readonly id: string;
  readonly label: string;
  readonly insideDiameterMm: number;
  readonly use: 'dripline' | 'solid';
  readonly origin: Origin;
}

/** Tubing with emitters built in; sold in each of the spacings. */
export interface Dripline {
  readonly id: string;
  readonly label: string;
  readonly emitter: Emitter;
  readonly spacingsM: readonly number[];
  readonly tubingId: string;
  readonly origin: Origin;
}

/** An emitter or spray that is set into solid tubing, by the piece. */
export interface SingleEmitter {
  readonly id: string;
  readonly label: string;
  readonly emitter: Emitter;
  readonly origin: Origin;
}

/** Goods that a remedy may propose. A page's owner can put a list of local goods in its place. */
export interface Catalogue {
  readonly tubing: readonly Tubing[];
  readonly driplines: readonly Dripline[];
  readonly pointEmitters: readonly SingleEmitter[];
  readonly microSprays: readonly SingleEmitter[];
}
