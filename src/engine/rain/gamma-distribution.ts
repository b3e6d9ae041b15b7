/** The gamma distribution, which depths of rain days follow: its cumulative probability and its inverse. */

// Beyond this many scales nothing is left: less than 1e-200 of any distribution of shape 50 or less.
const FAR_OUT = 700;
const MOST_STEPS = 100;

/**
 * Share of a gamma distribution of scale 1 that lies at or below x: the regularized lower incomplete gamma function P(shape, x).
 *
 *     P(a, x) = x^a e^-x / Gamma(a + 1) (1 + x / (a + 1) + x^2 / ((a + 1) (a + 2)) + ...)
 *
 * All terms are positive, so no digits are lost: good to 1e-12 for shapes from 0.05 to 50. At x = 0 and below it is 0.
 *
 * Source: Abramowitz and Stegun 1964, 6.5.29 (the number from memory). With x half of chi-square and shape half of the degrees of
 * freedom it is the chi-square distribution.
 */
export function gammaCumulative(x: number, shape: number): number {
  if (!(x > 0)) return 0;
  if (x > FAR_OUT) return 1;
  return Math.min(1, Math.exp(logCumulative(Math.log(x), shape, seriesSum(x, shape), logGamma(shape + 1))));
}

/**
 * The value that a share `probability` of a gamma distribution lies below, in the unit of `scale`; the mean is shape x scale.
 *
 * Newton's steps for ln P as a function of ln x, which rises by a / (the sum above) there. That slope falls throughout, and the
 * start x^a / Gamma(a + 1) = probability lies below the root, since P never exceeds it: so each step comes nearer from below,
 * none passes it, and no bracket is needed.
 *
 * Shapes from 0.05 to 50. A probability of 0 or less gives 0, of 1 or more Infinity.
 */
export function gammaQuantile(probability: number, shape: number, scale: number): number {
  if (!(probability > 0)) return 0;
  if (probability >= 1) return Number.POSITIVE_INFINITY;
  const wanted = Math.log(probability);
  const logGammaNext = logGamma(shape + 1);
  let logX = (wanted + logGammaNext) / shape;
  for (let taken = 0; taken < MOST_STEPS; taken += 1) {
    const sum = seriesSum(Math.exp(logX), shape);
    const step = ((wanted - logCumulative(logX, shape, sum, logGammaNext)) * sum) / shape;
    logX += step;
    if (Math.abs(step) < 1e-12) break;
  }
  return scale * Math.exp(logX);
}

function logCumulative(logX: number, shape: number, sum: number, logGammaNext: number): number {
  return shape * logX - Math.exp(logX) - logGammaNext + Math.log(sum);
}

function seriesSum(x: number, shape: number): number {
  let term = 1;
  let sum = 1;
  for (let divisor = shape + 1; term > sum * 1e-16; divisor += 1) {
    term *= x / divisor;
    sum += term;
  }
  return sum;
}

/**
 * ln Gamma(z) for z above 0, by Stirling's series from 20 on and Gamma(z + 1) = z Gamma(z) below; good to 1e-14.
 *
 * Source: Abramowitz and Stegun 1964, 6.1.15, 6.1.41 (the numbers from memory).
 */
function logGamma(z: number): number {
  let product = 1;
  let large = z;
  for (; large < 20; large += 1) product *= large;
  const inverse = 1 / large;
  const square = inverse * inverse;
  const series = inverse * (1 / 12 - square * (1 / 360 - square * (1 / 1260 - square / 1680)));
  return (large - 0.5) * Math.log(large) - large + Math.log(2 * Math.PI) / 2 + series - Math.log(product);
}
