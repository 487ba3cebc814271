import type { z } from 'zod';
import { type Fault, fault } from '../message.ts';
import { type Step, writePath } from './paths.ts';
import { ID_PATTERN } from './name-patterns.ts';

type Issue = z.core.$ZodIssue;

/** More faults than anybody reads; the rest is counted. */
const MOST_FAULTS = 300;

/** What the schema found wrong with a file, each with its path by id and one code per kind of problem. */
export function shapeFaults(root: unknown, issues: readonly Issue[]): readonly Fault[] {
  const faults = issues.slice(0, MOST_FAULTS).flatMap((issue) => faultsOfIssue(root, issue, []));
  const rest = issues.length - MOST_FAULTS;
  return rest > 0 ? [...faults, fault('', 'moreFaults', { count: rest })] : faults;
}

function faultsOfIssue(root: unknown, issue: Issue, above: readonly Step[]): readonly Fault[] {
  const steps = [...above, ...issue.path.map((step) => (typeof step === 'number' ? step : String(step)))];
  const path = writePath(root, steps);
  const got = valueAt(root, steps);
  if (got === ABSENT)
    return [fault(path, 'missingField', { field: String(steps.at(-1) ?? ''), allowed: allowedBy(issue) })];
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => fault(writePath(root, [...steps, key]), 'unknownKey', { key }));
    case 'too_big':
      return [tooBig(path, issue, got)];
    case 'too_small':
      return [tooSmall(path, issue, got)];
    case 'invalid_format':
      return [badFormat(path, issue, got)];
    case 'invalid_union':
      return unionFaults(root, issue, steps);
    case 'invalid_type':
      return issue.expected === 'int'
        ? [fault(path, 'notWhole', { got: told(got) })]
        : [fault(path, 'wrongType', { allowed: allowedBy(issue), got: told(got) })];
    default:
      return [fault(path, 'notAllowed', { allowed: allowedBy(issue), got: told(got) })];
  }
}

/** A union speaks through the branch that the value was meant for: the one of its own kind, else all are named. */
function unionFaults(root: unknown, issue: z.core.$ZodIssueInvalidUnion, steps: readonly Step[]): readonly Fault[] {
  const meant = issue.errors.find((branch) => branch.length > 0 && branch.every((inner) => inner.path.length > 0));
  if (meant) return meant.flatMap((inner) => faultsOfIssue(root, inner, steps));
  return [fault(writePath(root, steps), 'notAllowed', { allowed: allowedBy(issue), got: told(valueAt(root, steps)) })];
}

function tooBig(path: string, issue: z.core.$ZodIssueTooBig, got: unknown): Fault {
  const most = Number(issue.maximum);
  if (issue.origin === 'string') return fault(path, 'textTooLong', { most, got: sizeOf(got) });
  if (issue.origin === 'array') return fault(path, 'listTooLong', { most, got: sizeOf(got) });
  return fault(path, 'tooBig', { most, got: told(got) });
}

function tooSmall(path: string, issue: z.core.$ZodIssueTooSmall, got: unknown): Fault {
  const least = Number(issue.minimum);
  if (issue.origin === 'string') return fault(path, 'textTooShort', { least, got: sizeOf(got) });
  if (issue.origin === 'array') return fault(path, 'listTooShort', { least, got: sizeOf(got) });
  return fault(path, issue.inclusive ? 'tooSmall' : 'notAbove', { least, got: told(got) });
}

function badFormat(path: string, issue: z.core.$ZodIssueInvalidStringFormat, got: unknown): Fault {
  if (issue.format === 'date') return fault(path, 'badDate', { got: told(got) });
  return fault(path, issue.pattern === String(ID_PATTERN) ? 'badId' : 'badJointKey', { got: told(got) });
}

const TYPE_WORDS: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'text in quotation marks',
  boolean: 'true or false',
  array: 'a list in square brackets',
  object: 'an object in braces',
};

/** What may stand there, in words. */
function allowedBy(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return TYPE_WORDS[issue.expected] ?? issue.expected;
    case 'invalid_value':
      return issue.values.map((value) => told(value)).join(', ');
    case 'invalid_union':
      return issue.errors.length > 0
        ? [...new Set(issue.errors.flatMap((branch) => branch.map(allowedBy)))].join(', ')
        : optionsOf(issue).map(told).join(', ');
    default:
      return '';
  }
}

/** The kinds that a field such as `kind` or `role` may name. */
const optionsOf = (issue: object): readonly unknown[] =>
  'options' in issue && Array.isArray(issue.options) ? issue.options : [];

/** A value as the sentence shows it: short, and text in quotation marks. */
function told(value: unknown): string {
  if (typeof value === 'string') return `"${value.length > 40 ? `${value.slice(0, 40)}...` : value}"`;
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (value === null) return 'null';
  return typeof value === 'object' ? 'an object' : String(value);
}

const sizeOf = (value: unknown): number => (typeof value === 'string' || Array.isArray(value) ? value.length : 0);

const ABSENT = Symbol('absent');

function valueAt(root: unknown, steps: readonly Step[]): unknown {
  let here: unknown = root;
  for (const step of steps) {
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, step)) return ABSENT;
    here = (here as Readonly<Record<Step, unknown>>)[step];
  }
  return here === undefined ? ABSENT : here;
}
