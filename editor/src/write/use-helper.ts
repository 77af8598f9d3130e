import { useEffect, useState } from 'react';
import { newHelper, type Helper } from './ask.ts';
import type { Opening } from './messages.ts';

type Purpose = 'map' | 'unguarded' | 'requirements';

/** One worker for each thing that takes longer than a keystroke. It stays while its panel is closed: a new one begins slowly. */
const kept = new Map<Purpose, { readonly opening: Opening; readonly helper: Helper }>();

function helperFor(purpose: Purpose, opening: Opening): Helper {
  const known = kept.get(purpose);
  if (known?.opening === opening) return known.helper;
  known?.helper.end();
  const helper = newHelper();
  helper.ask<'open'>(opening).catch(() => undefined);
  kept.set(purpose, { opening, helper });
  return helper;
}

/** The worker for some purpose, which knows what is open; null until it is asked for. */
export function useHelper(purpose: Purpose, opening: Opening): Helper | null {
  const [helper, setHelper] = useState<Helper | null>(null);
  useEffect(() => setHelper(helperFor(purpose, opening)), [purpose, opening]);
  return helper;
}
