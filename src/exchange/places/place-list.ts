/** The packed places with what unpacks and searches them: fetched together, when somebody begins to type a name. */
export { findPlaces } from './find-places.ts';
export { PACKED_PLACES } from './places.data.ts';
export { placesSteps } from './unpack-places.ts';
