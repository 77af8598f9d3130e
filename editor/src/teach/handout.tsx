import { useEffect, type ReactNode } from 'react';
import type { Handout, HandoutLevel } from '../../../src/index.ts';
import { HandoutMapLater } from './map-later.tsx';
import { HandoutRules } from './handout-rules.tsx';

/** The handout as it is printed, to be looked at first. */
export function HandoutPage({ handout }: { readonly handout: Handout }): ReactNode {
  useEffect(() => {
    document.body.dataset['print'] = 'handout';
    return () => {
      delete document.body.dataset['print'];
    };
  }, []);
  return (
    <div className="handout-part">
      <div className="handout-actions">
        <p>
          On paper, A4, black and white: the levels and whom to call, the rules with their reasons, the
          sources, the map.
        </p>
        <button type="button" className="button button-strong" onClick={() => print()}>
          Print
        </button>
      </div>
      <article className="handout" aria-label={`Handout: ${handout.title}`}>
        <header className="handout-head">
          <h2>{handout.title}</h2>
          <p>{`${handout.edition} · ${handout.ladder}`}</p>
          {handout.owners.length > 0 && <p>{`Kept by: ${handout.owners.join(', ')}`}</p>}
          {handout.about !== null && <p className="handout-about">{handout.about}</p>}
        </header>
        <section>
          <h3>Levels, and whom to call</h3>
          <Levels levels={handout.levels} />
        </section>
        {handout.plans.length > 0 && (
          <section>
            <h3>Plans for a patient</h3>
            <ul>
              {handout.plans.map(({ title, says }) => (
                <li key={title}>
                  <strong>{title}</strong>. {says}
                </li>
              ))}
            </ul>
          </section>
        )}
        {handout.parts.map((part) => (
          <HandoutRules key={part.edition} part={part} isAlone={handout.parts.length === 1} />
        ))}
        <section className="handout-map">
          <h3>The map</h3>
          <HandoutMapLater />
        </section>
        <footer className="handout-end">
          <p>
            <strong>{handout.caution}</strong>
          </p>
          <p className="digest">{`${handout.edition}, ${handout.digest}`}</p>
        </footer>
      </article>
    </div>
  );
}

function Levels({ levels }: { readonly levels: readonly HandoutLevel[] }): ReactNode {
  return (
    <table className="handout-levels">
      <thead>
        <tr>
          <th scope="col">Level</th>
          <th scope="col">Tell</th>
          <th scope="col">At the bedside within</th>
          <th scope="col">No answer</th>
          <th scope="col">Next full set within</th>
          <th scope="col">Step down</th>
        </tr>
      </thead>
      <tbody>
        {levels.map(({ title, says, tell, respond, reassess, noAnswer, stepDown }) => (
          <tr key={title}>
            <th scope="row">
              {title}
              {says !== null && <span className="handout-says">{says}</span>}
            </th>
            <td data-label="Tell">
              {tell.length === 0 ? 'nobody' : tell.map((who) => <span key={who}>{who}</span>)}
            </td>
            <td data-label="At the bedside within">{respond ?? '–'}</td>
            <td data-label="No answer">{noAnswer ?? '–'}</td>
            <td data-label="Next full set within">{reassess ?? '–'}</td>
            <td data-label="Step down">{stepDown ?? '–'}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
