import {
  fieldAt,
  gapKey,
  type Analysis,
  type FieldMarks,
  type Gap,
  type OffencePlayer,
  type PlayerId,
  type Point,
  type ProtectionPicture,
  type RoleId,
  type Yards,
} from '../engine/index.ts';
import type { SceneOptions } from './options.ts';

/** Radius of an offensive player's circle. Linemen stand at least 1.3 yd apart, so that circles never touch. */
export const OFFENCE_RADIUS: Yards = 0.47;

/** An analysis with what every mark asks for, worked out once. */
export interface Picture {
  readonly analysis: Analysis;
  readonly options: SceneOptions;
  readonly field: FieldMarks;
  /** Where a gap crosses the line; null for a gap this look does not have. */
  readonly gapX: (gap: Gap) => Yards | null;
  /** Where a defender stands; null for a role that is not on the field. */
  readonly manAt: (role: RoleId) => Point | null;
  /** Where a man of the offence is at the snap; null for one who is not in this look. */
  readonly playerAt: (player: PlayerId) => Point | null;
  /** A role's letter as drawn; "" for a role that is not on the field. */
  readonly letterOf: (role: RoleId) => string;
  readonly passer: OffencePlayer | null;
  /** The protection to show; null for none, or for one this look cannot have. */
  readonly protection: ProtectionPicture | null;
  /** Drawn light, because the picture is another room's. */
  readonly faint: (role: RoleId) => boolean;
}

/** Works out a picture's common facts. */
export function pictureOf(analysis: Analysis, options: SceneOptions): Picture {
  const gaps = new Map(analysis.gaps.map((owned) => [gapKey(owned.gap), owned.x]));
  const men = new Map(analysis.assignments.map(({ aligned }) => [aligned.role.id, aligned]));
  const { passer, players } = analysis.facts;
  const shown = options.protection === null ? undefined : analysis.protections[options.protection];
  return {
    analysis,
    options,
    field: fieldAt(analysis.setup.level, analysis.setup.spot),
    gapX: (gap) => gaps.get(gapKey(gap)) ?? null,
    manAt: (role) => men.get(role) ?? null,
    letterOf: (role) => men.get(role)?.role.letter ?? '',
    playerAt: (player) => players.get(player) ?? null,
    passer: passer === null ? null : (players.get(passer) ?? null),
    protection: shown?.kind === 'answered' ? shown.picture : null,
    faint: (role) => options.room !== null && men.get(role)?.role.room !== options.room,
  };
}

/** How far a defender's letters reach from where he stands; his paths start here. */
export function manRadius(letter: string): Yards {
  return letter.length <= 1 ? 0.56 : 0.68;
}
