/**
 * Pressure in tube and pipe, from what is published: Hazen-Williams in SI, hf = 10.67 L Q^1.852 / (C^1.852 d^4.87) m of water with Q in m3/s and
 * d in m (NFPA 13, USDA-NRCS NEH 650), and C of plastic by bore (Keller and Bliesner 1990; NEH 623 ch. 7).
 */

/** A metre of water, by convention (NIST SP 811, appendix B: 9.806 65 kPa); a foot 0.4335 psi. */
export const KPA_PER_METRE = 9.80665;

export function smoothness(boreMm: number): number {
  if (boreMm < 20) return 130;
  return boreMm < 40 ? 140 : 150;
}

export interface Tube {
  readonly lengthM: number;
  readonly boreMm: number;
}

/** kPa that are lost along it while it carries so many L/h. */
export function frictionOf({ lengthM, boreMm }: Tube): (flowLph: number) => number {
  const headAtOneM3s = (10.67 * lengthM) / (smoothness(boreMm) ** 1.852 * (boreMm / 1000) ** 4.87);
  const kpaAtOneLph = headAtOneM3s * KPA_PER_METRE * (1 / 1000 / 3600) ** 1.852;
  return (flowLph) => kpaAtOneLph * flowLph ** 1.852;
}
