import { useState } from 'react';
import { textToKey, type SiteApprovers } from '../../../../src/index.ts';
import { decide, type FieldProblem, type Signer } from './send.ts';
import type { ToDecide } from './to-decide.ts';

/** What is typed into a dialog, by its fields. It outlives the dialog, until it is entered. */
export interface Typing {
  readonly typed: Readonly<Record<string, string>>;
  readonly onType: (change: Readonly<Record<string, string>>) => void;
}

export interface Decision {
  readonly problems: readonly FieldProblem[];
  readonly isSending: boolean;
  /** The file with the private key, which is read when it is signed with, and never before. */
  readonly setKeyFile: (file: File | null) => void;
  /** Sends it, unless something is known to be lacking. */
  readonly send: (lacking: readonly FieldProblem[], asked: ToDecide) => Promise<void>;
}

interface Given {
  readonly approvers: SiteApprovers;
  readonly onEntered: (says: string) => void;
  /** Told when the record may have gone on without this page. */
  readonly onRefused: () => void;
}

/** Sends a decision from a dialog, and keeps what was refused beside its fields. */
export function useDecision({ approvers, onEntered, onRefused }: Given): Decision {
  const [problems, setProblems] = useState<readonly FieldProblem[]>([]);
  const [isSending, setSending] = useState(false);
  const [keyFile, setKeyFile] = useState<File | null>(null);
  const send: Decision['send'] = async (lacking, asked) => {
    if (isSending) return;
    setProblems(lacking);
    if (lacking.length > 0) return;
    setSending(true);
    const signer = approvers.signing ? await signerOf(asked.typed['by'] ?? '', keyFile, approvers) : null;
    const sent =
      signer && 'says' in signer
        ? ({ kind: 'refused', problems: [signer] } as const)
        : await decide(asked, signer);
    setSending(false);
    if (sent.kind === 'entered') onEntered(sent.says);
    else {
      setProblems(sent.problems);
      onRefused();
    }
  };
  return { problems, isSending, setKeyFile, send };
}

/** Whoever signs, with the key of her file; or why it cannot be signed. No file at all is told by the server’s answer. */
async function signerOf(
  by: string,
  file: File | null,
  { people }: SiteApprovers,
): Promise<Signer | FieldProblem | null> {
  if (!file) return null;
  const key = file.size > 10_000 ? null : textToKey(await file.text());
  if (!key) return { field: 'key', says: `“${file.name}” holds no private key.` };
  const own = people.find(({ name }) => name === by)?.key;
  return own === key.x
    ? { by, key }
    : { field: 'key', says: `This is not the key of ${by}: another one stands on the list.` };
}
