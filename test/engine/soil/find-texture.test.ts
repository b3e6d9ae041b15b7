import { describe, expect, test } from 'vitest';
import { findTexture } from '../../../src/engine/soil/find-texture.ts';
import type { SoilTextureId } from '../../../src/engine/soil/textures.data.ts';

describe('finding a texture', () => {
  test('gives the row of its id', () => {
    expect(findTexture('silt-loam').name.en).toBe('Silt loam');
  });

  test('refuses a texture that no table has, in words', () => {
    expect(() => findTexture('porridge' as SoilTextureId)).toThrow(
      new RangeError('There is no soil texture "porridge".'),
    );
  });
});
