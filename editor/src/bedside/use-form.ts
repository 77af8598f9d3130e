import { useEffect, useState } from 'react';
import type { Form } from '../../../src/index.ts';
import { ask } from './ask.ts';
import type { SiteProtocol } from '../common/site-protocol.ts';

export type Opened =
  | { readonly state: 'opening' }
  | { readonly state: 'failed' }
  | { readonly state: 'open'; readonly form: Form }
  | { readonly state: 'problems'; readonly problems: readonly string[] };

/** Opens a protocol or a ward policy: it is checked, and the form says what is to be entered. `all` holds what it may build on. */
export function useForm(protocol: SiteProtocol, all: readonly SiteProtocol[]): Opened {
  const [opened, setOpened] = useState<Opened>({ state: 'opening' });
  useEffect(() => {
    let isWanted = true;
    const tell = (next: Opened): void => {
      if (isWanted) setOpened(next);
    };
    ask<'open'>({ kind: 'open', protocol, all }).then(
      ({ form, problems }) => tell(form ? { state: 'open', form } : { state: 'problems', problems }),
      () => tell({ state: 'failed' }),
    );
    return () => {
      isWanted = false;
    };
  }, [protocol, all]);
  return opened;
}
