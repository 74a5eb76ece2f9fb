/** Paper: one vector PDF from scenes and reports. The only folder that knows points, fonts and page breaks. */
export { printSheets } from './printSheets.ts';
export {
  PAPERS,
  type Paper,
  type PrintInput,
  type Sheet,
  type SheetFonts,
  type SheetRoom,
  type SheetTitle,
} from './types.ts';
