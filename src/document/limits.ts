/** How large a playbook file may be, part by part. A file beyond a limit is refused, and the refusal says the limit. */

/** Bytes of a whole file: 5,000 calls with everything they need come to about 15 million. */
export const MAX_FILE_BYTES = 25_000_000;

/** Lists and objects inside each other. A playbook needs 11. */
export const MAX_DEPTH = 32;

/** Entries of one object. The largest of a playbook, its root, has 15. */
export const MAX_KEYS = 64;

/** Yards from the ball, each way: the field is 53 1/3 wide, so this holds every spot on it from any hash mark. */
export const FIELD_BOX = 60;

/** Characters (Unicode code points) of a text. */
export const MAX_TEXT = { name: 120, tag: 40, note: 4_000 } as const;

/** The players of one team (the game's own law at all three rule levels). */
export const ELEVEN = 11;

/** The last day of camp something can be put in: no camp is longer, spring practice and bowl practice together included. */
export const LAST_CAMP_DAY = 60;

/** Entries of a list. */
export const MAX_ENTRIES = {
  roles: 60,
  fronts: 200,
  coverages: 500,
  looks: 2_000,
  pressures: 2_000,
  calls: 20_000,
  opponents: 200,
  sheets: 500,
  byHand: 20_000,
  tells: 60,
  rules: 40,
  cases: 40,
  tests: 12,
  steps: 20,
  gaps: 14,
  tags: 40,
  techniques: 30,
  takers: 20,
  needs: 20,
  waivers: 5_000,
  runs: 40,
  protections: 20,
  checkOuts: 40,
  dictionary: 500,
} as const;
