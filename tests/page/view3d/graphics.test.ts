/** Whether there is graphics hardware, by what renderers call themselves: names as browsers report them, from memory. */
import { expect, it } from 'vitest';
import { graphics, graphicsNamed } from '../../../src/page/view3d/graphics.js';

it.each([
  'ANGLE (Google, Vulkan 1.3.0 (SwiftShader Device (Subzero) (0x0000C0DE)), SwiftShader driver)',
  'llvmpipe (LLVM 15.0.6, 256 bits)',
  'Software Adapter',
  'ANGLE (Microsoft, Microsoft Basic Render Driver Direct3D11 vs_5_0 ps_5_0)',
])('%s is the processor alone', (name) => {
  expect(graphicsNamed(name)).toBe('software');
});

it.each([
  'ANGLE (Intel, Mesa Intel(R) UHD Graphics 620 (KBL GT2), OpenGL 4.6)',
  'Mali-G78',
  'null',
])('%s is taken for hardware', (name) => {
  expect(graphicsNamed(name)).toBe('hardware');
});

it('is none where there is no page', () => {
  expect(graphics()).toBe('none');
});
