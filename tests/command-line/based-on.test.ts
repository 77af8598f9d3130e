import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { bundledText } from '../bundled.ts';
import { ask } from './ask.ts';

const lesson = 'protocols/lessons/a_ward_adapts';

/** A folder with files, by their paths in it. */
function folderOf(files: Readonly<Record<string, string>>): string {
  const place = mkdtempSync(join(tmpdir(), 'based-on-'));
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(place, path)), { recursive: true });
    writeFileSync(join(place, path), text);
  }
  return place;
}

const ladder = bundledText('alder_ladder/ladder.yaml');
const parent = bundledText('lessons/a_limit_to_change/protocol.yaml');
const child = bundledText('lessons/a_ward_adapts/protocol.yaml');

test('a protocol is read with the one that it is based on, and says what is from where', async () => {
  const { exit, out, err } = await ask([
    'read',
    lesson,
    '--set',
    '{"systolic": 99, "diastolic": 55, "heart_rate": 120}',
  ]);
  expect([exit, err]).toEqual([0, '']);
  expect(out).toContain(
    'Mean pressure low (calls for: Call the doctor)\n  From a_limit_to_change, edition 1.\n',
  );
  expect(out.match(/From a_limit_to_change/g)).toHaveLength(1);
  expect(out).toContain('BASED ON\n- a_limit_to_change, edition 1: Lesson 3: a limit to change\n');
  expect(out.replace(/\s+/g, ' ')).toContain(
    'Changed: lowest acceptable mean pressure: 70 mmHg instead of 65 mmHg, because: The people of this ward live at high pressures.',
  );
});

test('a rule that was withdrawn is named with the reason', async () => {
  const without = child
    .replace('  limits:', '  withdraws: [{ rule: mean_low, because: Another chart asks for it. }]\n  limits:')
    .replace('{ rule: mean_low, heart_rate', '{ mean_estimate: { below: mean_floor }, heart_rate');
  const place = folderOf({
    'alder_ladder/ladder.yaml': ladder,
    'a_limit_to_change/protocol.yaml': parent,
    'a_ward_adapts/protocol.yaml': without,
  });
  const set = '{"systolic": 99, "diastolic": 55, "heart_rate": 120}';
  const { out } = await ask(['read', join(place, 'a_ward_adapts'), '--set', set]);
  expect(out).toContain('Withdrawn: Mean pressure low, because: Another chart asks for it.');
  expect(out).not.toContain('From a_limit_to_change');
});

test('a protocol that stands alone prints nothing of this', async () => {
  const { out } = await ask([
    'read',
    'protocols/lessons/a_limit_to_change',
    '--set',
    '{"systolic": 80, "diastolic": 40}',
  ]);
  expect(out).not.toMatch(/BASED ON|From /);
});

test('a folder is checked with each protocol and its own cases', async () => {
  const { exit, out } = await ask(['check', 'protocols/lessons']);
  expect(exit).toBe(0);
  expect(out).toContain('a_limit_to_change · protocol, edition 1 · 1 rule · 8 of 8 cases');
  expect(out).toContain('a_ward_adapts · protocol, edition 1 · 2 rules · 8 of 8 cases');
});

test.each([
  [
    'in the folder beside',
    { 'one/a_limit_to_change/protocol.yaml': parent, 'one/a_ward_adapts/protocol.yaml': child },
    'one/a_ward_adapts',
  ],
  [
    'elsewhere below protocols',
    {
      'protocols/one/two/a_limit_to_change/protocol.yaml': parent,
      'protocols/three/a_ward_adapts/protocol.yaml': child,
    },
    'protocols/three/a_ward_adapts',
  ],
  ['as a file beside', { 'one/a_limit_to_change.yaml': parent, 'one/ward.yml': child }, 'one/ward.yml'],
  [
    'in a folder of its own folder',
    { 'one/a_limit_to_change/protocol.yaml': parent, 'one/ward.yml': child },
    'one/ward.yml',
  ],
])('what a protocol is based on is found %s', async (_, files, path) => {
  const top = path.split('/')[0] ?? '';
  const place = folderOf({ ...files, [`${top}/alder_ladder/ladder.yaml`]: ladder });
  const { exit, err } = await ask(['check', join(place, path)]);
  expect([exit, err]).toEqual([0, '']);
});

test('the nearest of one name stands', async () => {
  const place = folderOf({
    'protocols/alder_ladder/ladder.yaml': ladder,
    'protocols/far/a_limit_to_change/protocol.yaml': parent.replace('edition: 1', 'edition: 2'),
    'protocols/near/a_limit_to_change/protocol.yaml': parent,
    'protocols/near/a_ward_adapts/protocol.yaml': child,
  });
  expect((await ask(['check', join(place, 'protocols/near/a_ward_adapts')])).err).toBe('');
});

test('a mistake of the parent is told in its own file, and in the other one as what it is', async () => {
  const place = folderOf({
    'alder_ladder/ladder.yaml': ladder,
    'a_limit_to_change/protocol.yaml': parent.replace('below: mean_floor', 'below: mean_flor'),
    'a_ward_adapts/protocol.yaml': child,
  });
  const { exit, err } = await ask(['check', place]);
  expect(exit).toBe(1);
  expect(err).toMatch(/a_limit_to_change\/protocol\.yaml:\d+:\d+: error: "mean_flor" is not a number/);
  expect(err).toMatch(
    /a_ward_adapts\/protocol\.yaml:\d+:\d+: error: The protocol "a_limit_to_change" has to be mended .*a_limit_to_change\/protocol\.yaml:\d+:\d+/,
  );
});

test('a name that is nearly right is told', async () => {
  const place = folderOf({
    'alder_ladder/ladder.yaml': ladder,
    'a_limit_to_change/protocol.yaml': parent,
    'a_ward_adapts/protocol.yaml': child.replace(
      'protocol: a_limit_to_change',
      'protocol: a_limit_to_chnage',
    ),
  });
  const { exit, err } = await ask(['check', join(place, 'a_ward_adapts')]);
  expect(exit).toBe(1);
  expect(err).toContain('Did you mean "a_limit_to_change"?');
});

test.each(['document', 'logic', 'bounds'])('--show %s shows the whole', async (stage) => {
  const { exit, out } = await ask(['check', lesson, '--show', stage]);
  expect(exit).toBe(0);
  expect(out).toContain(stage === 'bounds' ? 'heart_rate' : 'mean_low');
});

test('small changes of the ward’s own numbers are noticed by its own cases', async () => {
  const { exit, out } = await ask(['check', '--unguarded', lesson]);
  expect(exit).toBe(0);
  expect(out).toContain(' 0 unguarded');
  const place = folderOf({
    'alder_ladder/ladder.yaml': ladder,
    'a_limit_to_change/protocol.yaml': parent,
    'a_ward_adapts/protocol.yaml': child,
  });
  // Without cases every change of its own is unguarded, and none of what it inherits.
  const without = await ask(['check', '--unguarded', join(place, 'a_ward_adapts')]);
  expect(without.out).toContain('limit mean_floor, value: 70 to 69\n  UNGUARDED');
  expect(without.out).not.toMatch(/^rule mean_low, .*\n {2}UNGUARDED/m);
});

test('another ladder than the parent’s is told as that, whether or not there is such a ladder', async () => {
  const place = folderOf({
    'alder_ladder/ladder.yaml': ladder,
    'a_limit_to_change/protocol.yaml': parent,
    'a_ward_adapts/protocol.yaml': child.replace('ladder: alder_ladder', 'ladder: ward_ladder'),
  });
  const { err } = await ask(['check', join(place, 'a_ward_adapts')]);
  expect(err).toContain('call for levels of another ladder');
  expect(err).not.toContain('cannot be found');
});

test('without the ladder of both it is the ladder that is told', async () => {
  const place = folderOf({
    'a_limit_to_change/protocol.yaml': parent,
    'a_ward_adapts/protocol.yaml': child,
  });
  const { err } = await ask(['check', join(place, 'a_ward_adapts')]);
  expect(err.match(/error:/g)).toHaveLength(1);
  expect(err).toContain('The ladder "alder_ladder" cannot be found');
});
