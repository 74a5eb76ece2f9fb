/** Paper: one vector PDF from scenes and reports. The only folder that knows points, fonts and page breaks. */
export { PAPERS, type Paper, type PrintInput, type Sheet, type SheetFonts, type SheetTitle } from './types.ts';
