// What `npm start` and `npm test` share. Node's built-ins only: this runs before anything is installed.

import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));

/** Kept inside node_modules, so that deleting node_modules also forgets it. */
const stamp = join(root, 'node_modules', '.installed-from');

/** Prints one sentence for the person at the terminal. */
export function say(sentence) {
  process.stdout.write(`${sentence}\n`);
}

/**
 * Runs a program in the project's folder and waits for it.
 * `input` is given on its standard input; without it, there is none. Returns the exit code, 1 when it was ended by a signal.
 */
export function run(program, args, { input = '', env = process.env } = {}) {
  const { status, error } = spawnSync(program, args, {
    cwd: root,
    env,
    input,
    stdio: ['pipe', 'inherit', 'inherit'],
    shell: program === 'npm' && process.platform === 'win32',
  });
  if (error) say(`${program} could not be started: ${error.message}`);
  return status ?? 1;
}

/** Runs npm: the one that runs this script, where there is one. Returns the exit code. */
export function npm(args, options) {
  const own = process.env['npm_execpath'];
  return own?.endsWith('.js') ? run(process.execPath, [own, ...args], options) : run('npm', args, options);
}

function lockfileHash() {
  return createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex');
}

/** Installs the dependencies when the lockfile is not the one they were installed from. Returns the exit code. */
export function install() {
  const wanted = lockfileHash();
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) {
    say('The dependencies are those of package-lock.json: nothing to install.');
    return 0;
  }
  say('Installing the dependencies that package-lock.json names (npm ci).');
  const code = npm(['ci', '--no-audit', '--no-fund', '--ignore-scripts']);
  if (code === 0) writeFileSync(stamp, wanted);
  else say('The dependencies could not be installed; the reason stands above.');
  return code;
}
