import { useId, type FocusEvent } from 'react';
import { useSession } from '../session/session.ts';

/** How a field says that all that is chosen in it while it has the focus is one step of the history. */
interface FieldGesture {
  /** Runs what a choice does. */
  readonly during: (act: () => void) => void;
  /** For the field's element: the focus comes in or leaves, which from one button of a group to the next it does not. */
  readonly edges: { readonly onFocus: (event: FocusEvent) => void; readonly onBlur: (event: FocusEvent) => void };
}

/** The arrow keys choose every entry of a closed list on their way: what is left at the end is one step, to be undone once. */
export function useFieldGesture(): FieldGesture {
  const { store } = useSession();
  const id = useId();
  const edge = ({ currentTarget, relatedTarget }: FocusEvent): void => {
    const inside = relatedTarget instanceof Node && currentTarget.contains(relatedTarget);
    if (!inside) store.endGesture();
  };
  return { during: (act) => store.inGesture(`chosen ${id}`, act), edges: { onFocus: edge, onBlur: edge } };
}
