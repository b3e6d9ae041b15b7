/** Soils to choose from, of a garden and of a zone. */
import { SOIL_TEXTURES, type SoilTextureId } from '../../engine/soil/textures.data.ts';
import { namedOptions } from './fields.ts';
import type { FormContext } from './form-context.ts';
import type { Option } from './options.ts';

export function textureOptions(context: FormContext): readonly Option<SoilTextureId>[] {
  return namedOptions(SOIL_TEXTURES, context);
}
