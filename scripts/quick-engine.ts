import type { Plugin } from 'vite';

/**
 * Two engines from one source, in the build only. A formula tells its steps through its parameter `note`, and the first
 * figures need none: for them every engine module is taken as if nobody ever listened, with `note` undefined throughout.
 * What `src/engine/explain.ts` reaches is a second, whole copy that comes late. Development and tests have one engine.
 */
export const quickEngine = (): Plugin => ({
  name: 'quick-engine',
  apply: 'build',
  enforce: 'pre',
  async resolveId(source, importer, options) {
    const isInWhole = importer?.endsWith(WHOLE) === true;
    if (!isInWhole && !source.endsWith('/explain.ts')) return null;
    const from = isInWhole ? importer.slice(0, -WHOLE.length) : importer;
    const found = await this.resolve(source, from, { ...options, skipSelf: true });
    return found && IN_ENGINE.test(found.id) ? { ...found, id: found.id + WHOLE } : found;
  },
  transform: {
    order: 'post', // types are gone by then
    handler(code, id) {
      return IN_ENGINE.test(id) ? { code: withoutTelling(code, this.parse(code)), map: null } : null;
    },
  },
});

const WHOLE = '?whole';
const IN_ENGINE = /\/src\/engine\/[^?]+\.ts$/;

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [part: string]: unknown;
}

interface Cut {
  readonly start: number;
  readonly end: number;
  readonly instead: string;
}

/**
 * The code of a module as it runs where `note` is undefined: calls of `note` and what only happens under `if (note)` are
 * gone, `note ? a : b` is b, and nobody hands `note` on. Nothing else is touched.
 * @throws where `note` is used in any other way, since that could change what is judged
 */
export function withoutTelling(code: string, program: unknown): string {
  const cuts: Cut[] = [];
  const cut = (start: number, end: number, instead = ''): void => void cuts.push({ start, end, instead });

  const visit = (node: Node): void => {
    if (isNote(node)) throw new Error(`note is used in a way that has no quick form: ${around(code, node)}`);
    if (node.type === 'ExpressionStatement' && isTelling(node['expression'])) return cut(node.start, node.end, ';');
    if (
      node.type === 'IfStatement' &&
      isNobodyThere(node['test']) &&
      isNode(node['consequent']) &&
      !isNode(node['alternate'])
    ) {
      cut(node.start, node['consequent'].start);
      return visit(node['consequent']);
    }
    if (node.type === 'IfStatement' && isSomebodyThere(node['test']) && !isNode(node['alternate'])) {
      return cut(node.start, node.end, ';');
    }
    if (node.type === 'ArrowFunctionExpression' && isTelling(node['body'])) {
      cutNotes(node['params'], 'note', cut);
      return cut(node['body'].start, node['body'].end, '{}');
    }
    if (node.type === 'ConditionalExpression' && isNote(node['test']) && isNode(node['alternate'])) {
      cut(node.start, node['alternate'].start, '(');
      cut(node['alternate'].end, node.end, ')');
      return visit(node['alternate']);
    }
    cutNotes(node['params'], 'note', cut);
    cutNotes(node['arguments'], 'void 0', cut);
    for (const child of childrenOf(node)) visit(child);
  };

  if (isNode(program)) visit(program);
  return cuts
    .toSorted((a, b) => b.start - a.start)
    .reduce((rest, { start, end, instead }) => rest.slice(0, start) + instead + rest.slice(end), code);
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value && 'start' in value;

const isNote = (value: unknown): boolean => isNode(value) && value.type === 'Identifier' && value['name'] === 'note';

/** `note`, or `note && ...` */
const isSomebodyThere = (test: unknown): boolean =>
  isNote(test) ||
  (isNode(test) && test.type === 'LogicalExpression' && test['operator'] === '&&' && isNote(test['left']));

/** `!note` */
const isNobodyThere = (test: unknown): boolean =>
  isNode(test) && test.type === 'UnaryExpression' && test['operator'] === '!' && isNote(test['argument']);

/** `note(...)` or `note?.(...)` */
function isTelling(value: unknown): value is Node {
  if (!isNode(value)) return false;
  const call = value.type === 'ChainExpression' ? value['expression'] : value;
  return isNode(call) && call.type === 'CallExpression' && isNote(call['callee']);
}

/** Takes `note` from a list of parameters or arguments; something keeps its place where others follow. */
function cutNotes(list: unknown, otherwise: string, cut: (start: number, end: number, instead?: string) => void): void {
  if (!Array.isArray(list)) return;
  list.forEach((item: unknown, i) => {
    if (!isNode(item) || !isNote(item)) return;
    const before: unknown = list[i - 1];
    if (i < list.length - 1) cut(item.start, item.end, otherwise);
    else cut(isNode(before) ? before.end : item.start, item.end);
  });
}

/** Parts of a node that are evaluated or bound; the name of a property is neither, and lists of notes are dealt with. */
function* childrenOf(node: Node): Generator<Node> {
  for (const [part, value] of Object.entries(node)) {
    const isName = (part === 'key' || part === 'property') && node['computed'] !== true;
    if (isName) continue;
    const isList = part === 'params' || part === 'arguments';
    for (const child of Array.isArray(value) ? value : [value]) {
      if (isNode(child) && !(isList && isNote(child))) yield child;
    }
  }
}

const around = (code: string, { start, end }: Node): string => code.slice(Math.max(0, start - 60), end + 40);
