/** What things are called in sentences, and back: no two have the same label. */
export interface Labels {
  /** `systolic pressure`; `“pressure that is low”`; `mean [mean_2]` where two have one title. */
  of(name: string): string;
  /** Always in quotation marks: `“Systolic too low”`; `[odd]` where the title has such marks itself. */
  quoted(name: string): string;
  /** Undefined for what nothing is called. */
  nameOf(label: string): string | undefined;
}

/** Anything with a name that is used once, and a title that anybody may have written. */
export interface Titled {
  readonly name: string;
  readonly title: string;
}

/** Words that join the parts of a sentence: a title with one of them in it stands in quotation marks. */
const joining = /(?:^| )(?:is|was|when|over the last|limit|rule|otherwise|answer to|yes as)(?: |$)/i;

const isPlain = (title: string): boolean =>
  /^\p{L}[\p{L}\p{N}%/'’-]*(?: [\p{L}\p{N}%/'’-]+)*$/u.test(title) && !joining.test(title);

/** Whether a title can stand between quotation marks without ending them. */
const isQuotable = (title: string): boolean => !/[“”[\]\p{C}]/u.test(title) && title.trim() === title;

/** A title as it is heard: without capitals, blanks and signs that look alike. */
const heard = (title: string): string =>
  title
    .normalize('NFKC')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]/gu, '');

/** Whether some other thing has a title that a reader could take for this one. */
function soundsAlike(titled: readonly Titled[]): (title: string) => boolean {
  const counts = new Map<string, number>();
  for (const { title } of titled) counts.set(heard(title), (counts.get(heard(title)) ?? 0) + 1);
  return (title) => (counts.get(heard(title)) ?? 0) > 1;
}

/** The labels of some things: by their titles, with the name in brackets wherever a title alone could be taken for another. */
export function labelsOf(titled: readonly Titled[]): Labels {
  const alike = soundsAlike(titled);
  const labels = new Map<string, { readonly label: string; readonly quoted: string }>();
  const names = new Map<string, string>();
  for (const { name, title } of titled) {
    const suffix = isQuotable(title) && !alike(title) ? '' : `[${name}]`;
    const join = (shown: string): string => (suffix === '' ? shown : `${shown} ${suffix}`);
    const quoted = isQuotable(title) ? join(`“${title}”`) : `[${name}]`;
    const label = isPlain(title) ? join(title) : quoted;
    labels.set(name, { label, quoted });
    names.set(label, name).set(quoted, name);
  }
  const labelled = (name: string): { readonly label: string; readonly quoted: string } => {
    const found = labels.get(name);
    if (!found) throw new Error(`nothing is called ${name}`);
    return found;
  };
  return {
    of: (name) => labelled(name).label,
    quoted: (name) => labelled(name).quoted,
    nameOf: (label) => names.get(label),
  };
}
