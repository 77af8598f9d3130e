import type { Compiled } from '../../outcome/compile.ts';
import type { Ladder } from '../../protocol/protocol.ts';
import type { Ward } from '../../ward/ward.ts';

/** A protocol, or a ward policy, that is compared. */
export type Compared = Compiled | Ward;

/** One side of a comparison: what is read with, as if a protocol alone were a policy of one. */
export interface Side {
  readonly kind: 'protocol' | 'ward';
  readonly name: string;
  readonly edition: number;
  readonly title: string;
  readonly digest: string;
  readonly logicDigest: string;
  readonly ladder: Ladder;
  readonly members: readonly Compiled[];
}

export function sideOf(compared: Compared): Side {
  if ('members' in compared) {
    const { name, edition, title, digest, logicDigest, ladder, members } = compared;
    return { kind: 'ward', name, edition, title, digest, logicDigest, ladder, members };
  }
  const { name, edition, title, digest, logicDigest, ladder } = compared.protocol;
  return { kind: 'protocol', name, edition, title, digest, logicDigest, ladder, members: [compared] };
}
