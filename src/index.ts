/** The library's public face: exports only. */
export type { Curve, Point, Vertex } from './geometry/curve.js';
export type { Drawing, Legend, Lettering, Stroke, Table } from './drawing/drawing.js';
export { layerNames, layerStyles } from './drawing/layers.js';
export { lengthText, shortLengthText, angleText, per100Text } from './drawing/length-text.js';
export { drawVessel, formats, packVessel, planVessel, renderVessel } from './pipeline.js';
export type { DrawOptions, Format, OutFile, Plan } from './pipeline.js';
export { figuresOf } from './figures/figures.js';
export type { Figures } from './figures/figures.js';
export { pieces } from './pieces/index.js';
export { languages } from './pieces/words/index.js';
export { paperNames, type PaperName } from './sheets/paper.js';
export type { Message } from './spec/issue.js';
export { nearest } from './spec/nearest.js';
export { writeSpec } from './spec/write.js';
export type { Spec } from './spec/spec.js';
export type { Vessel } from './vessel/vessel.js';
export { toDxf } from './writers/dxf.js';
export { toSvg } from './writers/svg.js';
