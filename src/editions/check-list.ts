import type { Path } from '../problems/place.ts';
import type { Report } from '../problems/problem.ts';
import type { ApproversFile } from '../shape/generated/types.ts';
import { isYes } from '../vocabulary/read-choices.ts';
import { lacking, sameName } from './people.ts';

/** A list of approvers, in its own file or in the record. */
export type ApproversList = Pick<ApproversFile, 'signing' | 'needs' | 'people'>;

/** Looks whether a list could be worked with: each person and each key once, keys where entries are signed, enough people. */
export function checkList({ signing, needs, people }: ApproversList, path: Path, report: Report): void {
  people.forEach(({ name, key }, index) => {
    const at = [...path, 'people', index];
    const before = people.slice(0, index);
    if (before.some((each) => sameName(each.name, name))) report('approver_twice', [...at, 'name'], { name });
    const other = key === undefined ? undefined : before.find((each) => each.key === key);
    if (other) report('key_of_two', [...at, 'key'], { name, other: other.name });
    if (isYes(signing) && key === undefined) report('key_lacking', at, { name });
  });
  needs.forEach(({ role }, index) => {
    if (needs.slice(0, index).some((each) => sameName(each.role, role)))
      report('role_needed_twice', [...path, 'needs', index, 'role'], { role });
  });
  for (const short of lacking(needs, people)) report('too_few_people', [...path, 'needs'], short);
}
