/** The library's public face: exports only. */
export type { Curve, Point, Vertex } from './geometry/curve.js';
export type { Drawing, Legend, Lettering, Stroke, Table } from './drawing/drawing.js';
export { withLegend } from './drawing/legend.js';
export { layerNames, layerStyles } from './drawing/layers.js';
export { lengthText, shortLengthText, angleText, per100Text } from './drawing/length-text.js';
export { planVessel, type Plan } from './plan.js';
export { solveVessel } from './vessel/solve.js';
export { drawVessel, formats, letteringWays, packVessel, renderVessel } from './pipeline.js';
export type { DrawOptions, Format, LetteringWay, OutFile } from './pipeline.js';
export { printPdf, type Printing } from './printing.js';
export { figuresOf } from './figures/figures.js';
export type { Figures } from './figures/figures.js';
export {
  dipTable,
  fullDip,
  litresAtDip,
  mostDipRows,
  postures,
  usualPosture,
} from './capacity/dip-table.js';
export type { DipTable, Posture } from './capacity/dip-table.js';
export { recut } from './capacity/recut.js';
export type { NotBuildable, Recut, Recutting } from './capacity/recut.js';
export { keeps, sizeFor } from './capacity/size.js';
export type { Keep, SizeRequest, Sized, Unreachable } from './capacity/size.js';
export type { Change } from './capacity/size-dimensions.js';
export { capacityLitres } from './capacity/volume.js';
export { aboutJobSheet, jobSheetName } from './job/job-sheet.js';
export { frenchHoop, germanHoop } from './hoop-names.js';
export { asWritten, decimalComma, frenchText, languages, wordsIn } from './language.js';
export type { Language, Translations, Typeset } from './language.js';
export { pieces } from './pieces/index.js';
export { fanFault, largestPlank, mostFanWidths, plankFault } from './pieces/size-limits.js';
export type { FanFault, PlankFault } from './pieces/size-limits.js';
export { ordinaryRange } from './pieces/stave-widths.js';
export { cutStave } from './pieces/section-outside.js';
export { vesselPicture } from './pieces/picture.js';
export { settingPlan } from './pieces/setting-plan.js';
export { pieceWords, type Words } from './pieces/words/index.js';
export { checkRequest } from './rack/check-request.js';
export type { RequestCode, RequestIssue } from './rack/check-request.js';
export { matchStaves } from './rack/match.js';
export type * from './rack/request.js';
export { readStock } from './rack/stock.js';
export type { Stock, StockCode, StockIssue, StockReading, StockStave } from './rack/stock.js';
export { describeStockIssue, stockWords } from './rack/stock-words.js';
export { setFiles, setSpecText, setsTable } from './set-files.js';
export type { ChosenSet, SetFileOptions } from './set-files.js';
export { decimalsOf, runningTotals } from './sets/running-totals.js';
export { measuredWidths, swapStave } from './sets/swap.js';
export type { Replacement, RingStave, Swap, SwapQuestion } from './sets/swap.js';
export { swapInSet, withReplacement } from './sets/swap-in-set.js';
export { requestFor } from './sets/wishes.js';
export type { Wishes } from './sets/wishes.js';
export { paperNames, type PaperName } from './sheets/paper.js';
export type { Message } from './spec/issue.js';
export { degreesOf, millimetresOf, writtenLength } from './spec/length.js';
export { nearest } from './spec/nearest.js';
export type { Wordings } from './spec/wording.js';
export { specWordings } from './spec/wordings.js';
export { keysOf, writeSpec } from './spec/write.js';
export { parseSource, type Source } from './spec/yaml-source.js';
export type { Spec } from './spec/spec.js';
export { rivetHead, rivetsOf } from './vessel/rivets.js';
export type { Vessel } from './vessel/vessel.js';
export { gapPicture } from './proof/picture.js';
export type { PackFile } from './proof/folder.js';
export type { Finding, Proof } from './proof/finding.js';
export { provePack } from './proof/prove.js';
export type { WholeProof } from './proof/prove.js';
export { proofReport, type ProofReport } from './proof/report.js';
export { proofWords, type ProofWords } from './proof/words.js';
export { toDxf } from './writers/dxf.js';
export { toCsv } from './writers/csv.js';
export { svgOrigin, toSvg } from './writers/svg.js';
export { curveData } from './writers/svg-path.js';
export { drawingBounds } from './drawing/bounds.js';
