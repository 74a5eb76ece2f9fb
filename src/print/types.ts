import type { RoleId } from '../engine/index.ts';
import type { Report } from '../report/index.ts';
import type { Scene } from '../scene/index.ts';

/** Paper sizes, always upright. */
export const PAPERS = ['letter', 'a4'] as const;
export type Paper = (typeof PAPERS)[number];

/** The bytes of two cuts of one typeface (WOFF, TTF or OTF). They are embedded; nothing is taken from the machine. */
export interface SheetFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

/** What the heading of a sheet says, ready to print. */
export interface SheetTitle {
  readonly call: string;
  readonly front: string;
  /** "First + Second, turned opposite". */
  readonly pressures: string;
  readonly coverage: string;
  readonly look: string;
  /** Backs and tight ends: "11". */
  readonly personnel: string;
  /** "ball on the left hash". */
  readonly spot: string;
  /** "call side: right". */
  readonly callSide: string;
}

/** One look of a call on one sheet. */
export interface Sheet {
  readonly title: SheetTitle;
  /** Built with the room's emphasis, if the sheet is for a room. */
  readonly scene: Scene;
  /** True: half a turn, which puts the offence at the bottom. */
  readonly flip: boolean;
  readonly report: Report;
}

/** The room a sheet is for, with its men, whose rows come first and bold. */
export interface SheetRoom {
  readonly name: string;
  readonly roles: readonly RoleId[];
}

/** A document to print: one sheet a look, each on a page of its own (or more, when its words are long). */
export interface PrintInput {
  readonly paper: Paper;
  readonly fonts: SheetFonts;
  /** The document's name, for the reader's window. */
  readonly title: string;
  /** Playbook or team, for the footer. */
  readonly book: string;
  /** Version and date as text, for the footer: there is no clock in here. */
  readonly stamp: string;
  /** Written into the file as its creation date, so that the same input gives the same bytes. */
  readonly created: Date;
  /** Null: everybody's sheet. */
  readonly room: SheetRoom | null;
  readonly sheets: readonly Sheet[];
}
