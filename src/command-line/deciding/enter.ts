import { draftAfter, makersOf, type Body } from '../../editions/entry.ts';
import { personOf } from '../../editions/people.ts';
import { listAfter, type Ledger } from '../../editions/record.ts';
import { signatureOf, type PrivateKey } from '../../editions/signatures.ts';
import type { EntryText } from '../../editions/texts-to-record.ts';
import { isYes } from '../../vocabulary/read-choices.ts';
import { enterDraft, type Entered } from './enter-draft.ts';

/** Makes the next entry of a record, signs it where entries are signed, looks whether it holds, and writes it. */
export async function enter(
  folder: string,
  record: Ledger,
  texts: readonly EntryText[],
  { body, at, keys }: { readonly body: Body; readonly at: string; readonly keys: readonly PrivateKey[] },
): Promise<Entered> {
  const draft = draftAfter(record, body, at);
  const list = listAfter(record)?.list ?? ('approvers' in body ? body.approvers : null);
  const signatures =
    list && isYes(list.signing)
      ? await Promise.all(
          makersOf(draft).flatMap((by) => {
            const x = personOf(list.people, by)?.key;
            const key = keys.find((each) => each.x === x);
            return key ? [signatureOf(draft, by, key)] : [];
          }),
        )
      : [];
  return enterDraft(folder, texts, draft, signatures);
}
