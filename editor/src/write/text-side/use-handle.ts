import { useCallback, useRef, type RefObject } from 'react';
import type { FieldHandle } from '../text-field/text-field.tsx';

/** The handle of the field, kept here and told to whoever else needs it. */
export function useHandle(
  onHandle: (handle: FieldHandle | null) => void,
): [RefObject<FieldHandle | null>, (handle: FieldHandle | null) => void] {
  const kept = useRef<FieldHandle>(null);
  const set = useCallback(
    (handle: FieldHandle | null): void => {
      kept.current = handle;
      onHandle(handle);
    },
    [onHandle],
  );
  return [kept, set];
}
