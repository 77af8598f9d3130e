// Generated from schema/*.schema.json; do not edit. npm run generate

import type { Validator } from '../validator.ts';

export const approvers: Validator;
export const cases: Validator;
export const dictionary: Validator;
export const edition: Validator;
export const ladder: Validator;
export const logic: Validator;
export const outcome: Validator;
export const protocol: Validator;
export const record_entry: Validator;
export const set: Validator;
export const ward: Validator;
export const ward_cases: Validator;
export const ward_outcome: Validator;
