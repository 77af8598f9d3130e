import approvers from '../../schema/approvers.schema.json' with { type: 'json' };
import cases from '../../schema/cases.schema.json' with { type: 'json' };
import dictionary from '../../schema/dictionary.schema.json' with { type: 'json' };
import edition from '../../schema/edition.schema.json' with { type: 'json' };
import ladder from '../../schema/ladder.schema.json' with { type: 'json' };
import logic from '../../schema/logic.schema.json' with { type: 'json' };
import outcome from '../../schema/outcome.schema.json' with { type: 'json' };
import protocol from '../../schema/protocol.schema.json' with { type: 'json' };
import record_entry from '../../schema/record_entry.schema.json' with { type: 'json' };
import set from '../../schema/set.schema.json' with { type: 'json' };
import ward from '../../schema/ward.schema.json' with { type: 'json' };
import ward_cases from '../../schema/ward_cases.schema.json' with { type: 'json' };
import ward_outcome from '../../schema/ward_outcome.schema.json' with { type: 'json' };
import type { Schema } from './schema.ts';

const all = {
  approvers,
  cases,
  dictionary,
  edition,
  ladder,
  logic,
  outcome,
  protocol,
  record_entry,
  set,
  ward,
  ward_cases,
  ward_outcome,
};

/** The schemas as plain data: what a problem says was expected, and what an editor shows at a key, is read from them. */
export const schemas = all as Readonly<Record<keyof typeof all, Schema>>;
