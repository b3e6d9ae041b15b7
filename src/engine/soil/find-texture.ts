import { SOIL_TEXTURES, type SoilTexture, type SoilTextureId } from './textures.data.ts';

const textureById: ReadonlyMap<SoilTextureId, SoilTexture> = new Map(SOIL_TEXTURES.map((row) => [row.id, row]));

/** The table row of a soil texture. A texture that no table has throws RangeError. */
export function findTexture(texture: SoilTextureId): SoilTexture {
  const row = textureById.get(texture);
  if (row === undefined) throw new RangeError(`There is no soil texture "${texture}".`);
  return row;
}
