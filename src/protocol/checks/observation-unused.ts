import { observationsRead } from '../walk.ts';
import type { Check } from './check.ts';

/** What is listed, or declared, is read by something. */
export const observationUnused: Check = ({ protocol, file }, report) => {
  // What could not be read has problems of its own.
  const unreadable = Object.keys(file.observations.declares ?? {}).filter(
    (name) => !protocol.vocabulary.has(name),
  );
  const read = new Set([...unreadable, ...observationsRead(protocol)]);
  const { needs = [], helps = [], declares = {} } = file.observations;
  needs.forEach((name, index) => {
    if (!read.has(name)) report('observation_unused', ['observations', 'needs', index], { name });
  });
  helps.forEach((name, index) => {
    if (!read.has(name)) report('observation_unused', ['observations', 'helps', index], { name });
  });
  const listed = [...needs, ...helps];
  for (const name of Object.keys(file.standing ?? {})) {
    if (!read.has(name) && !listed.includes(name))
      report('observation_unused', ['standing', name], { name }, { part: 'key' });
  }
  for (const name of Object.keys(declares)) {
    if (read.has(name) || listed.includes(name)) continue;
    report('observation_unused', ['observations', 'declares', name], { name }, { part: 'key' });
  }
};
