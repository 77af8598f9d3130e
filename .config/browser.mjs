// Finds a Chromium for the tests of the rooms, and installs one where that can be done. Node's built-ins only: this runs before
// anything is installed.

import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { run, say } from './house.mjs';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'];

const usualPlaces = [
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

function canRun(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** The path of a browser: that of CHROME_PATH, or one in a usual place. Null when there is none. */
export function findBrowser() {
  const own = process.env['CHROME_PATH'];
  if (own) return canRun(own) ? own : null;
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  const onPath = folders.flatMap((folder) => names.map((name) => join(folder, name)));
  return [...onPath, ...usualPlaces].find(canRun) ?? null;
}

/** Finds a browser, or installs one as root where apt-get is; null, and said, when neither can be done. */
export function browser() {
  const found = findBrowser();
  if (found) return found;
  const canInstall = process.getuid?.() === 0 && spawnSync('apt-get', ['--version']).status === 0;
  if (canInstall && !process.env['CHROME_PATH']) {
    say('There is no Chromium here: installing one for the tests of the rooms (apt-get).');
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    run('apt-get', ['update', '-qq'], { env });
    run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium', 'fonts-dejavu-core'], {
      env,
    });
    const installed = findBrowser();
    if (installed) return installed;
  }
  say(
    'There is no Chromium for the tests of the rooms. Install one, or name it in CHROME_PATH; these tests fail without it.',
  );
  return null;
}
