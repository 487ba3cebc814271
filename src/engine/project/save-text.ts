import type { Project } from './model.ts';
import { projectSchema } from './schema.ts';

const WIDTH = 120;

/**
 * The project as text for a file: fields in the order of the schema, an element on one line where it fits. The same
 * project always gives the same text, and a small change of the project is a small change of the text.
 */
export function saveText(project: Project): string {
  const inOrder = projectSchema.safeParse(project);
  return `${print(inOrder.success ? inOrder.data : project, '', 0)}\n`;
}

/** `before` is how much of the line is taken already. */
function print(value: unknown, indent: string, before: number): string {
  const flat = onOneLine(value);
  if (typeof value !== 'object' || value === null || indent.length + before + flat.length <= WIDTH) return flat;
  const deeper = `${indent} `;
  if (Array.isArray(value)) {
    return bracketed(
      '[',
      ']',
      value.map((element) => print(element, deeper, 1)),
      indent,
    );
  }
  const fields = present(value).map(([key, inside]) => {
    const name = `${JSON.stringify(key)}: `;
    return name + print(inside, deeper, name.length + 1);
  });
  return bracketed('{', '}', fields, indent);
}

const bracketed = (open: string, close: string, parts: readonly string[], indent: string): string =>
  `${open}\n${parts.map((part) => `${indent} ${part}`).join(',\n')}\n${indent}${close}`;

function onOneLine(value: unknown): string {
  if (Array.isArray(value)) return value.length === 0 ? '[]' : `[${value.map(onOneLine).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  const fields = present(value).map(([key, inside]) => `${JSON.stringify(key)}: ${onOneLine(inside)}`);
  return fields.length === 0 ? '{}' : `{ ${fields.join(', ')} }`;
}

const present = (value: object): readonly (readonly [string, unknown])[] =>
  Object.entries(value).filter(([, inside]) => inside !== undefined);
