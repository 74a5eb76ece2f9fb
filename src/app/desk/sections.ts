import type { Section } from '../../store/index.ts';

/** How the sections of the playbook are called: the tab, and one entry of it in a sentence. */
export const SECTION_WORDS: Readonly<Record<Section, { readonly tab: string; readonly one: string }>> = {
  pressures: { tab: 'Pressures', one: 'pressure' },
  looks: { tab: 'Looks', one: 'look' },
  fronts: { tab: 'Fronts', one: 'front' },
  coverages: { tab: 'Coverages', one: 'coverage' },
  roles: { tab: 'Roles', one: 'role' },
};
