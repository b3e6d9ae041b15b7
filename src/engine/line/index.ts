/** What a line carries: pressure and flow along it, whether it waters evenly, and how long it may be. */
export { lowestQuarterUniformity } from '../application/distribution-uniformity.ts';
export { applicationEfficiency } from '../application/efficiency.ts';
export { asMadeUniformity, type EmissionUniformityInput, emissionUniformity } from './emission-uniformity.ts';
export { type Emitter, emitterFlowLph } from './emitter.ts';
export { frictionCoefficient, frictionLossKpa, type Pipe } from './friction.ts';
export { type Lateral, type LateralProfile, lateral } from './lateral.ts';
export { type FlowGiven, type FlowGround, plantingFlows } from './planting-flows.ts';
export { VELOCITY_LIMIT_MS, velocityMs } from './velocity.ts';
export { type ZoneLine, zoneLines } from './zone-lines.ts';
