/**
 * Everything that a save can be refused for: the status of HTTP, and the words that the room shows to whoever wanted to save. Each says
 * what to do where something can be done. What is refused has changed nothing.
 */
export const refusals = {
  not_this_server: [421, 'This is not the address of this server.'],
  saves_nothing: [404, 'Nothing can be saved here. Download the text instead.'],
  only_post: [405, 'Here something can only be saved.'],
  another_page: [403, 'Only the rooms themselves can save here, not another page.'],
  opened_before: [
    403,
    'The rooms were started again after this page was opened. Open them in a second tab, then come back to this one and save again.',
  ],
  not_json: [415, 'What is saved must be sent as application/json, in UTF-8, and not compressed.'],
  too_large: [413, 'This is too large to save: with all that is sent along it may have 1 MiB at most.'],
  too_slow: [408, 'What was to be saved did not arrive in time. Save again.'],
  broken: [400, 'What was to be saved is not whole: it is no JSON in UTF-8. Save again.'],
  other_keys: [
    400,
    'To save, exactly these are sent, each once: id, part, text and on_disk; on_disk is a digest (sha256: and 64 hexadecimal digits) or null, the others are texts.',
  ],
  no_such_part: [400, 'Only a protocol or its cases can be saved here.'],
  no_such_id: [
    400,
    'A protocol is saved under a name of small letters, digits and underscores, at most 60 of them; folders around it stand before it with / between, at most 8.',
  ],
  no_unicode: [400, 'The text holds half a character, which no file can hold. Take it out, then save again.'],
  no_nul: [400, 'The text holds a NUL character, which no protocol can hold. Take it out, then save again.'],
  a_link: [
    403,
    'A folder or file of this name is a link to another place. What stands there is not changed from here.',
  ],
  not_a_file: [
    403,
    'Something else than a file, or than a folder, already has this name. Choose another name.',
  ],
  two_of_a_name: [403, 'Two protocols here have this name, so it is not certain which is meant.'],
  ward_cases_only: [403, 'Of a ward policy only its cases can be saved here.'],
  no_protocol_yet: [403, 'There is no protocol of this name yet. Save the protocol first, then its cases.'],
  too_large_there: [403, 'The file that stands there is larger than 1 MiB. It is left as it is.'],
  may_not_write: [
    403,
    'This file, or the folder around it, may not be written by you. What stood there before still stands there. Download the text, or ask whoever looks after the folder.',
  ],
  no_room: [
    507,
    'There is no room left on the disk. What stood there before still stands there. Make room, then save again, or download the text.',
  ],
  failed: [
    500,
    'It could not be saved. What stood there before still stands there. Save again, or download the text.',
  ],
} as const satisfies Readonly<Record<string, readonly [status: number, says: string]>>;

export type Refusal = keyof typeof refusals;

/** A refusal where something else might have been found. */
export interface Refused {
  readonly refused: Refusal;
}

export const refused = (why: Refusal): Refused => ({ refused: why });

export function isRefused(found: object): found is Refused {
  return 'refused' in found;
}

/** What the system's own reasons for not reading or writing a file mean here. */
export function refusalOf(error: unknown): Refusal {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (['ENOSPC', 'EDQUOT', 'EFBIG'].includes(code)) return 'no_room';
  if (['EACCES', 'EPERM', 'EROFS', 'EBUSY', 'ETXTBSY'].includes(code)) return 'may_not_write';
  if (code === 'ELOOP') return 'a_link';
  if (['ENOTDIR', 'EISDIR'].includes(code)) return 'not_a_file';
  return 'failed';
}
