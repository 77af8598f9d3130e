import { useId, useState, type ReactNode } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { isName, schemaNear, startTexts, type StartFrom } from '../../../../src/index.ts';
import type { Site, SiteProtocol } from '../../common/site-protocol.ts';
import { draftIds, keepDraft } from '../desk/drafts.ts';

interface Props {
  readonly site: Site;
  /** Told of the id of the new protocol, of which there is a draft now. */
  readonly onMade: (id: string) => void;
  readonly onClose: () => void;
}

const nothing = 'nothing';

/** Begins a protocol: from nothing, from a lesson, or from another protocol that it adapts. Nothing is written to disk yet. */
export function NewDialog({ site, onMade, onClose }: Props): ReactNode {
  const id = useId();
  const [name, setName] = useState('');
  const [title, setTitle] = useState('');
  const [from, setFrom] = useState(nothing);
  const [says, setSays] = useState<string | null>(null);
  const protocols = site.protocols.filter(({ kind }) => kind === 'protocol');
  const isLesson = (each: SiteProtocol): boolean => each.id.startsWith('lessons/');
  const make = (): void => {
    const wrong = whyNot(name, title, site);
    if (wrong !== null) return setSays(wrong);
    const texts = startTexts(name, title.trim(), fromOf(from, site));
    if (!keepDraft(name, { texts, from: { protocol: null, cases: null } }))
      return setSays('This browser lets the page keep nothing, so a new protocol cannot be begun here.');
    return onMade(name);
  };
  return (
    <ModalOverlay className="overlay" isOpen isDismissable onOpenChange={(isOpen) => !isOpen && onClose()}>
      <Modal className="modal modal-small">
        <Dialog className="dialog">
          <Heading slot="title">New protocol</Heading>
          <div className="form-row">
            <label htmlFor={`${id}-title`}>Title, as people will read it</label>
            <input
              id={`${id}-title`}
              className="text-input"
              autoComplete="off"
              value={title}
              onChange={(event) => setTitle(event.target.value)}
            />
          </div>
          <div className="form-row">
            <label htmlFor={`${id}-name`}>Name of its folder</label>
            <input
              id={`${id}-name`}
              className="text-input"
              autoComplete="off"
              spellCheck={false}
              aria-describedby={`${id}-name-hint`}
              value={name}
              onChange={(event) => setName(event.target.value)}
            />
            <p id={`${id}-name-hint`} className="hint">
              Small letters, digits and underscores: ward_pressure. It stays for good; the title can change.
            </p>
          </div>
          <div className="form-row">
            <label htmlFor={`${id}-from`}>Begin from</label>
            <select id={`${id}-from`} value={from} onChange={(event) => setFrom(event.target.value)}>
              <option value={nothing}>Nothing: a small first protocol to change</option>
              <optgroup label="A protocol that it adapts: that one stays as it is, and this one says what differs">
                {protocols
                  .filter((each) => !isLesson(each))
                  .map((each) => (
                    <option key={each.id} value={`based_on ${each.id}`}>
                      {each.title}
                    </option>
                  ))}
              </optgroup>
              <optgroup label="A copy of a lesson">
                {protocols.filter(isLesson).map((each) => (
                  <option key={each.id} value={`copy ${each.id}`}>
                    {each.title}
                  </option>
                ))}
              </optgroup>
            </select>
          </div>
          {says !== null && (
            <p role="alert" className="form-says">
              {says}
            </p>
          )}
          <div className="dialog-end">
            <Button className="button" onPress={onClose}>
              Not now
            </Button>
            <Button className="button button-strong" onPress={make}>
              Begin
            </Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

/** Why a protocol cannot be begun so; null when it can. */
function whyNot(name: string, title: string, site: Site): string | null {
  if (title.trim() === '') return 'A title is needed.';
  if (!isName(name))
    return `“${name.slice(0, 60)}” cannot be the name: small letters, digits and underscores, beginning with a letter, and no word of the language.`;
  const taken = [...site.protocols.map((each) => each.id), ...draftIds()];
  return taken.some((each) => each === name || each.split('/').at(-1) === name)
    ? `There is already something called “${name}”.`
    : null;
}

function fromOf(chosen: string, { protocols, ladders }: Site): StartFrom {
  const [kind, id] = chosen.split(' ');
  const found = protocols.find((each) => each.id === id);
  if (!found || (kind !== 'copy' && kind !== 'based_on')) {
    const names = ladders.map(({ text }) => /^ladder:[ \t]*([a-z0-9_]+)/m.exec(text)?.[1] ?? '');
    const usual = names.find((each) => each === 'alder_ladder') ?? names[0];
    const schemas = protocols.map(({ text }) => schemaNear(text));
    return {
      kind: 'nothing',
      ladder: usual ?? 'alder_ladder',
      schema: schemas.find((each) => each !== null) ?? null,
    };
  }
  return { kind, protocol: found.text, cases: found.cases?.text ?? null };
}
