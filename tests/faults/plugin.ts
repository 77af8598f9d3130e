import type { Plugin } from 'vite';
import { faults } from './faults.ts';

/** Puts the fault that `FAULT` names into its module as it is loaded; without `FAULT` it does nothing. */
export function faultPlugin(): Plugin {
  const fault = faults.find(({ name }) => name === process.env['FAULT']);
  return {
    name: 'fault',
    enforce: 'pre',
    transform(code, id) {
      if (!fault || !id.split('?')[0]?.endsWith(`/src/${fault.file}`)) return null;
      return code.replace(fault.find, () => fault.put);
    },
  };
}
