import { useState, type ReactNode } from 'react';

interface Props {
  /** Cases, ready to be put below `cases:`. */
  readonly yaml: string;
  readonly says: string;
}

/** An example as cases, to be reviewed and pasted below `cases:`. */
export function CasesToCopy({ yaml, says }: Props): ReactNode {
  const [said, setSaid] = useState('');
  const copy = (): void => {
    navigator.clipboard.writeText(yaml).then(
      () => setSaid('Copied. Review it, and paste it below cases: in the file of cases.'),
      () => setSaid('This browser does not allow copying. Select the text and copy it.'),
    );
  };
  return (
    <figure className="cases-to-copy">
      <figcaption>{says}</figcaption>
      <pre tabIndex={0}>{yaml}</pre>
      <button type="button" className="button" onClick={copy}>
        Copy as cases
      </button>
      <p role="status">{said}</p>
    </figure>
  );
}
