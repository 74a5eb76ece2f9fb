/** The screens of the app: one call in one look, the parts calls are made of, all calls in all looks, a quiz for players. */
export type Screen = 'board' | 'playbook' | 'menu' | 'quiz';

/** The screens in their order, by the names on their buttons. */
export const SCREENS: readonly { readonly id: Screen; readonly name: string }[] = [
  { id: 'board', name: 'Board' },
  { id: 'playbook', name: 'Playbook' },
  { id: 'menu', name: 'Whole menu' },
  { id: 'quiz', name: 'Quiz' },
];
