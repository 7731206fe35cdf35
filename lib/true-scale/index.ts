export { type DrawingFile, drawingFiles } from "./drawing-files.js";
export { dxfFile } from "./dxf-file.js";
export { type Laid, type PaperPage, pdfFile } from "./pdf-file.js";
export * from "./plot.js";
export { svgFile } from "./svg-file.js";
export * from "./templates.js";
export { type Paper, papers, type TileGrid, tileGrid, tilePages } from "./tiles.js";
export { type TrueDrawing, trueDrawings } from "./true-drawings.js";
