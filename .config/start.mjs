// `npm start`: from a clean clone to advice for a sample patient, in one command.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { install, npm, root, run, say } from './house.mjs';

const protocols = ['pressure_reading', 'early_warning_score'];
const samplePatient = 'protocols/sample_patient.json';

const vitalwright = (args, input) => run(process.execPath, [join('dist', 'main.js'), ...args], { input });

const steps = [
  { says: null, does: install },
  { says: 'Building the command line into dist/.', does: () => npm(['run', '--silent', 'build']) },
  {
    says: 'Checking every bundled protocol: its words, its meaning and its cases.',
    does: () => vitalwright(['check']),
  },
  ...protocols.map((protocol) => ({
    says: `Reading the sample patient (${samplePatient}; invented) with the protocol ${protocol}.`,
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
