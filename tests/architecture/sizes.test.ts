import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { isTest, sourceFiles, textOf } from './sources.ts';

const mostFileLines = 300;
const mostFunctionLines = 50;

/** Lists of messages: as long as there are things to say. */
const messageLists = ['src/web/text/en.ts', 'src/web/text/de.ts'];

const files = sourceFiles.filter((path) => path.endsWith('.ts') && !isTest(path) && !path.endsWith('.d.ts'));

interface FunctionLength {
  path: string;
  /** Null for a function written where it is used. */
  name: string | null;
  line: number;
  lines: number;
}

/** Lines of every function in a source: from its own first line to its last. */
function functionLengths(path: string): FunctionLength[] {
  const source = ts.createSourceFile(path, textOf(path), ts.ScriptTarget.ES2023, true);
  const found: FunctionLength[] = [];
  const line = (position: number) => source.getLineAndCharacterOfPosition(position).line;
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node) && 'body' in node && node.body) {
      const named = node.name ?? (ts.isVariableDeclaration(node.parent) ? node.parent.name : undefined);
      const name = named?.getText(source) ?? null;
      found.push({
        path,
        name,
        line: line(node.getStart(source)) + 1,
        lines: line(node.end) - line(node.getStart(source)) + 1,
      });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const quantile = (values: number[], share: number) =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length * share)];

describe('sizes: a long file or function hides a subject that wants a name', () => {
  const functions = files.flatMap(functionLengths);
  const fileLines = files.map((path) => ({ name: path, lines: textOf(path).split('\n').length - 1 }));

  it('reports its figures', () => {
    const lengths = functions.filter(({ name }) => name !== null).map(({ lines }) => lines);
    const sizes = fileLines.map(({ lines }) => lines);
    console.log(
      `${lengths.length} named functions: median ${quantile(lengths, 0.5)} lines, 90 % within ${quantile(lengths, 0.9)}; ` +
        `${files.length} files: median ${quantile(sizes, 0.5)} lines, 90 % within ${quantile(sizes, 0.9)}`,
    );
    expect(quantile(lengths, 0.5)).toBeLessThanOrEqual(9);
  });

  it(`no file over ${mostFileLines} lines`, () => {
    expect(fileLines.filter(({ name, lines }) => lines > mostFileLines && !messageLists.includes(name))).toEqual([]);
  });

  it(`no function over ${mostFunctionLines} lines`, () => {
    expect(functions.filter(({ lines }) => lines > mostFunctionLines)).toEqual([]);
  });
});
