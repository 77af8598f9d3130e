import { readFileSync } from 'node:fs';
import jsonLogic from 'json-logic-js';
import { answersOf, setToInputs } from '../../../src/targets/json-logic/reader.mjs';

const file = JSON.parse(readFileSync('one_threshold.json', 'utf8'));
const { inputs, refused } = setToInputs(file, jsonLogic.apply, { systolic: 88 });
const answer = answersOf(file, jsonLogic.apply, inputs);
process.stdout.write(`${JSON.stringify({ refused, ...answer })}\n`);
