import { error } from '../entry.ts';
import { quoted } from '../visible.ts';

type Named = { name: string };
type Keyed = { key: string };
type Written = { written: string };

/** Problems of a text before its meaning is looked at. */
export const textWording = {
  // The whole text
  text_too_big: error(
    (f: { most: number }) => `This text is longer than ${f.most / 1_048_576} MiB and was not read.`,
    () => 'a shorter text; a long one can be split into several files',
  ),
  text_empty: error(
    () => 'Nothing is written here.',
    () => 'names and their values',
  ),
  text_not_text: error(
    () => 'This is not a text: too many of its characters are no letters, digits or signs.',
    () => 'a text file in UTF-8',
  ),
  top_not_a_map: error(
    (f: { is: string }) => `Here stands ${f.is}, where a file begins with names and their values.`,
    () => 'names and their values',
  ),
  too_deep: error(
    (f: { most: number }) => `Here more than ${f.most} lists and groups of keys stand inside each other.`,
    (f) => `at most ${f.most}; give a part a name of its own and use the name`,
  ),
  too_many_parts: error(
    (f: { most: number }) =>
      `This text has more than ${f.most.toLocaleString('en-GB')} keys, values and lines and was not read.`,
    () => 'a shorter text; a long one can be split into several files',
  ),
  more_problems: error(
    (f: { shown: number }) => `There are more problems from here on; these are the first ${f.shown}.`,
    () => 'that these are mended first',
  ),

  // Characters
  control_character: error(
    (f: Named) =>
      `A control character (${f.name}) stands here. It cannot be seen and means nothing in a text.`,
    () => 'letters, digits, signs, spaces and line ends',
  ),
  hidden_character: error(
    (f: Named) =>
      `A character that cannot be seen (${f.name}) stands here. It can make a text look like another.`,
    () => 'only characters that can be seen',
  ),
  broken_character: error(
    (f: Named) => `A character here is broken (${f.name}); what was meant is lost.`,
    () => 'the character that was meant, in a file saved as UTF-8',
  ),

  // YAML and JSON
  not_yaml: error((f: { detail: string }) => `This cannot be read as YAML: ${f.detail}`),
  not_json: error((f: { detail: string }) => `This cannot be read as JSON: ${f.detail}`),
  directive: error(
    (f: Written) => `${quoted(f.written)} would change how the file is read; that is not done here.`,
    () => 'no line that begins with %',
  ),
  several_documents: error(
    () => 'A second document begins here; a file holds one.',
    () => 'one document, without a line of three dashes in the middle',
  ),
  anchor: error(
    (f: Written) =>
      `${quoted(f.written)} gives a part of the file a mark to be copied by; nothing is copied here.`,
    () => 'the part written out; a text that begins with & stands in quotation marks',
  ),
  alias: error(
    (f: Written) =>
      `${quoted(f.written)} asks for a copy of another part of the file; nothing is copied here.`,
    () => 'the part written out; a text that begins with * stands in quotation marks',
  ),
  tag: error(
    (f: Written) =>
      `${quoted(f.written)} would change what kind of value follows; the value alone says that here.`,
    () => 'the value alone; a text that begins with ! stands in quotation marks',
  ),
  merge_key: error(
    () => '"<<" asks for the keys of another part of the file; nothing is copied here.',
    () => 'the keys written out',
  ),

  // Keys
  key_twice: error(
    (f: Keyed) => `${quoted(f.key)} stands here twice; only one of them could count.`,
    () => 'each key once',
  ),
  key_not_text: error(
    (f: Written) => `${quoted(f.written)} stands where a name belongs.`,
    () => 'a name in small letters, followed by a colon',
  ),
  key_reserved: error(
    (f: Keyed) => `${quoted(f.key)} cannot be a name here: programs read it as a part of themselves.`,
    () => 'another name',
  ),

  // Numbers
  number_not_plain: error(
    (f: Written) => `${quoted(f.written)} is not a number in plain digits.`,
    () =>
      'digits with at most one point between them, for example 38.3 or 0.5; a text stands in quotation marks',
  ),
  number_too_long: error(
    (f: Written & { most: number }) => `${quoted(f.written)} has more digits than can be kept exactly.`,
    (f) => `at most ${f.most} digits`,
  ),
} as const;
