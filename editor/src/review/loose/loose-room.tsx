import { useState, type ReactNode } from 'react';
import type { Opening } from '../messages.ts';
import { EndList } from './end-list.tsx';
import type { LooseEnd } from './loose-here.ts';
import { MarkedText } from './marked-text.tsx';
import { SearchBar } from './search-bar.tsx';
import { useLoose } from './use-loose.ts';
import { WardMembers } from './ward-members.tsx';

interface Props {
  readonly opening: Opening;
}

/** What the draft leaves open: what its rules do together, and which small changes no case notices, beside its text. */
export function LooseRoom({ opening }: Props): ReactNode {
  const { protocol } = opening;
  return protocol.kind === 'ward' ? <WardMembers opening={opening} /> : <OfProtocol opening={opening} />;
}

function OfProtocol({ opening }: Props): ReactNode {
  const { protocol } = opening;
  const findings = useLoose(opening, 'findings');
  const unguarded = useLoose(opening, 'unguarded');
  const [chosen, setChosen] = useState<LooseEnd | null>(null);
  const ends = [...findings.ends, ...unguarded.ends];
  const shown = ends.find(({ key }) => key === chosen?.key) ?? null;
  return (
    <div className="loose-room">
      <div className="loose-side">
        <section className="panel loose-head">
          <h2>Loose ends of the draft in the folder</h2>
          <SearchBar
            heading="Findings"
            about="What the rules do together that nobody may have meant, asked of every set."
            looking={findings}
          />
          <SearchBar
            heading="Unguarded changes"
            about="Each small change of the rules that could be made by mistake, and that no case would notice."
            looking={unguarded}
          />
        </section>
        <EndList ends={ends} chosen={shown?.key ?? null} onChoose={setChosen} />
      </div>
      <MarkedText file={protocol.file} text={protocol.text} ends={ends} chosen={shown} onChoose={setChosen} />
    </div>
  );
}
