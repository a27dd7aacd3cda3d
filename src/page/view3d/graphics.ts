/** What the browser draws in space with. */

export type Graphics = 'none' | 'software' | 'hardware';

/** Renderers that use the processor alone, by the names they give themselves. */
const software = /swiftshader|llvmpipe|softpipe|software|basic render/i;

export const graphicsNamed = (renderer: string): Graphics =>
  software.test(renderer) ? 'software' : 'hardware';

export function graphics(): Graphics {
  try {
    const context = document.createElement('canvas').getContext('webgl2');
    if (!context) return 'none';
    const names = context.getExtension('WEBGL_debug_renderer_info');
    const renderer: unknown = names && context.getParameter(names.UNMASKED_RENDERER_WEBGL);
    context.getExtension('WEBGL_lose_context')?.loseContext();
    return graphicsNamed(String(renderer));
  } catch {
    return 'none';
  }
}
