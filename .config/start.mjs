// `npm start`: from a clean clone to advice for a sample patient, and to the rooms in the browser, in one command.

import { spawn, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { install, npm, root, run, say } from './house.mjs';

const protocols = ['early_warning_score', 'pressure_reading', 'alder_wing'];
const samplePatient = 'protocols/sample_patient.json';

const vitalwright = (args, input) => run(process.execPath, [join('dist', 'main.js'), ...args], { input });

const steps = [
  { says: null, does: install },
  {
    says: 'Building the command line and the rooms into dist/.',
    does: () => npm(['run', '--silent', 'build']),
  },
  {
    says: 'Checking every bundled protocol: its words, its meaning and its cases.',
    does: () => vitalwright(['check']),
  },
  ...protocols.map((protocol) => ({
    says: `Reading the sample patient (${samplePatient}; invented) with ${protocol}.`,
    does: () => vitalwright(['read', protocol], readFileSync(join(root, samplePatient), 'utf8')),
  })),
];

for (const { says, does } of steps) {
  if (says !== null) say(`\n${says}`);
  const code = does();
  if (code !== 0) {
    say(`\nStopped here: that step did not end well (exit code ${code}).`);
    process.exit(code);
  }
}
say('\nAll of it ran. To read a patient of your own: npx vitalwright read PROTOCOL --set JSON');
say('\nOpening the rooms.');
process.exitCode = await openRooms();

/** Serves the rooms until they are closed, and shows them where somebody sits in front of a browser. Returns the exit code. */
async function openRooms() {
  const rooms = spawn(process.execPath, [join('dist', 'main.js'), 'serve'], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  // Ctrl-C reaches the rooms too; they close, and this ends with them.
  process.on('SIGINT', () => undefined);
  rooms.stdout.on('data', (text) => {
    process.stdout.write(text);
    const [address] = /http:\/\/\S+/.exec(String(text)) ?? [];
    if (address && process.stdout.isTTY && !process.env['CI']) show(address);
  });
  return new Promise((resolve) => rooms.on('close', (code) => resolve(code ?? 0)));
}

/** Opens an address in the browser of whoever sits here; without one nothing happens, as the address is printed. */
function show(address) {
  const program = { darwin: 'open', win32: 'explorer' }[process.platform] ?? 'xdg-open';
  const hasScreen = process.platform !== 'linux' || process.env['DISPLAY'] || process.env['WAYLAND_DISPLAY'];
  if (hasScreen) spawnSync(program, [address], { stdio: 'ignore', timeout: 5000 });
}
