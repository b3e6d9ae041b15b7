import { frictionCoefficient, frictionLossKpa, type Pipe } from '../../src/engine/line/friction.ts';

/** Pressure lost along a pipe that carries one flow, kPa. */
export function pipeLossKpa({ flowLph, ...pipe }: Pipe & { readonly flowLph: number }): number {
  return frictionLossKpa(frictionCoefficient(pipe), flowLph);
}
