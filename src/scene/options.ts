import type { Gap, PlayerId, RoleId, Room } from '../engine/index.ts';

/** Which part of the field a scene shows: everybody and everything drawn for them, the box only, or sideline to sideline. */
export const VIEWS = ['players', 'box', 'field'] as const;
export type View = (typeof VIEWS)[number];

/** What to light: the people of both teams and the gaps of a finding. */
export interface Lit {
  readonly roles: readonly RoleId[];
  readonly players: readonly PlayerId[];
  readonly gaps: readonly Gap[];
}

/** How to draw an analysis. */
export interface SceneOptions {
  /** `full`: both teams and every job. `mini`: the offence and the line only, without letters, for a picture an inch wide. */
  readonly detail: 'full' | 'mini';
  readonly view: View;
  /** That room's men heavy and all others light; null draws everybody alike. */
  readonly room: Room | null;
  readonly lit: Lit;
  /** Beside each receiver, light, the letter of the man who answers him. One whom nobody answers is always ringed. */
  readonly answers: boolean;
  /** Draws that run of the look, by its place in `Analysis.runs`: who carries, pulls and leads, and the gaps that opens. */
  readonly run: number | null;
  /** Draws that protection, by its place in `Analysis.protections`: who blocks whom, and who comes free. */
  readonly protection: number | null;
}

/** Everything, everybody alike, nothing lit, the play of the offence left out. */
export const WHOLE_PICTURE: SceneOptions = {
  detail: 'full',
  view: 'players',
  room: null,
  lit: { roles: [], players: [], gaps: [] },
  answers: false,
  run: null,
  protection: null,
};
