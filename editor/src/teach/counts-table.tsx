import type { ReactNode } from 'react';
import { verdicts, verdictTitles, type Counts, type Results } from '../../../src/index.ts';

/** How answers stand beside the rules: in all, and by what the rule said. */
export function CountsTable({ results }: { readonly results: Results }): ReactNode {
  return (
    <table className="counts">
      <caption className="visually-hidden">How the answers stand beside the rules</caption>
      <thead>
        <tr>
          <th scope="col">Your ward’s rule said</th>
          <th scope="col">Answers</th>
          {verdicts.map((verdict) => (
            <th key={verdict} scope="col">
              {verdictTitles[verdict]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {results.byLevel.map(({ ruleSays, ...counts }) => (
          <Row key={ruleSays} title={ruleSays} counts={counts} />
        ))}
      </tbody>
      <tfoot>
        <Row title="In all" counts={results} />
      </tfoot>
    </table>
  );
}

function Row({ title, counts }: { readonly title: string; readonly counts: Counts }): ReactNode {
  return (
    <tr>
      <th scope="row">{title}</th>
      <td data-label="Answers">{counts.answers}</td>
      {verdicts.map((verdict) => (
        <td
          key={verdict}
          data-label={verdictTitles[verdict]}
          data-verdict={verdict}
          data-none={counts[verdict] === 0 ? '' : undefined}
        >
          {counts[verdict]}
        </td>
      ))}
    </tr>
  );
}
