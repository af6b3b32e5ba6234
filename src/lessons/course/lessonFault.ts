import type * as z from 'zod/mini';
import { type DesignFault, fault } from '../../design/fault';
import { joinPath, valueAt } from '../../design/path';
import { schemaFault } from '../../design/schemaFault';
import { STEP_KINDS } from './lessonSchema';

type Issue = z.core.$ZodIssue;

/** The fault that the first issue of a refused lesson stands for, with the path of the field as in the file. */
export function lessonFault(issue: Issue, document: unknown): DesignFault {
  const value = valueAt(document, issue.path);
  const path = joinPath(issue.path);
  if (issue.code === 'invalid_union' && value !== undefined) {
    return issue.errors.length > 0
      ? lessonFault(nearestIssue(issue), document)
      : fault(path, { code: 'notAChoice', found: String(value), options: STEP_KINDS });
  }
  if (Array.isArray(value) && issue.code === 'too_big') {
    return fault(path, { code: 'tooMany', count: value.length, limit: Number(issue.maximum) });
  }
  if (Array.isArray(value) && issue.code === 'too_small') {
    const detail = `wants at least ${issue.minimum} entries, has ${value.length}`;
    return fault(path, { code: 'unsound', detail });
  }
  return schemaFault(issue, document);
}

/** Of the forms that a value could have had, the one that it comes nearest to: the fewest issues, none about its keys. */
function nearestIssue(issue: Extract<Issue, { readonly code: 'invalid_union' }>): Issue {
  const weight = (issues: readonly Issue[]) =>
    issues.reduce((sum, { code }) => sum + (code === 'unrecognized_keys' ? 10 : 1), 0);
  const [nearest] = issue.errors.toSorted((a, b) => weight(a) - weight(b));
  return { ...nearest[0], path: [...issue.path, ...nearest[0].path] };
}
