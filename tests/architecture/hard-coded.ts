/**
 * Finds text for people that stands in a source instead of a catalogue: in a component's markup, in the
 * strings of its script and of modules, and in the HTML that the server writes.
 */
import { parse } from 'svelte/compiler';
import ts from 'typescript';

/** Attributes of elements that people read or hear, and of components that hand on what is read. */
const spoken =
  /^(aria-(label|description|valuetext|roledescription)|title|placeholder|alt|label|legend|hint|missing|done)$/;
const units = /\b(mg|ml|kg|cm|mm)\b/g;

/** Two words one after the other, or one that begins like a sentence. */
function isProse(text: string): boolean {
  return /\p{L}{2,}[,:;.]? \p{L}{2,}/u.test(text) || /^\p{Lu}\p{Ll}{2,}[.!?…]?$/u.test(text.trim());
}

function hasWord(text: string): boolean {
  return /\p{L}{2}/u.test(text.replace(units, ''));
}

type Node = Record<string, unknown> & { type?: string };
const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && !Array.isArray(value);
const nodesOf = (value: unknown): Node[] => (Array.isArray(value) ? value : [value]).filter(isNode);

/** Every text with a letter in a component's markup that would be shown or spoken, units aside. */
export function textsOfMarkup(source: string): string[] {
  const found: string[] = [];
  const visit = (node: Node): void => {
    if (node.type === 'Attribute' || node.type === 'StyleDirective') return visitAttribute(node);
    if (node.type === 'Text' && hasWord(String(node['data']))) found.push(String(node['data']));
    if (node.type === 'ExpressionTag' || node.type === 'HtmlTag')
      found.push(...results(node['expression']).filter(hasWord));
    for (const [key, value] of Object.entries(node)) if (key !== 'css') nodesOf(value).forEach(visit);
    if (isProse(String(literal(node) ?? ''))) found.push(String(literal(node)));
  };
  const visitAttribute = (node: Node): void => {
    const isSpoken = node.type === 'Attribute' && spoken.test(String(node['name']));
    for (const part of nodesOf(node['value'])) {
      const texts = part.type === 'Text' ? [String(part['data'])] : results(part['expression']);
      found.push(...texts.filter((text) => (isSpoken ? hasWord(text) : node['name'] !== 'class' && isProse(text))));
      if (node['name'] !== 'class') nodesOf(part['expression']).forEach(visit);
    }
  };
  visit(parse(source, { modern: true }).fragment as unknown as Node);
  return [...new Set(found.map((text) => text.trim()))];
}

/** A string or a piece of a template. */
function literal(node: Node): unknown {
  if (node.type === 'Literal' && typeof node['value'] === 'string') return node['value'];
  return node.type === 'TemplateElement' ? (node['value'] as { cooked: string }).cooked : null;
}

/** The strings that an expression may have as its value; what a function gives is not known. */
function results(expression: unknown): string[] {
  if (!isNode(expression)) return [];
  const text = literal(expression);
  if (text !== null) return [String(text)];
  const parts = { ConditionalExpression: ['consequent', 'alternate'], LogicalExpression: ['left', 'right'] };
  const more = { BinaryExpression: ['left', 'right'], TemplateLiteral: ['quasis', 'expressions'] };
  if (expression.type === 'BinaryExpression' && expression['operator'] !== '+') return [];
  const keys = { ...parts, ...more }[expression.type as keyof typeof parts] ?? [];
  return keys.flatMap((key) => nodesOf(expression[key]).flatMap(results));
}

/** Prose among the strings of a program; what an exception says to whoever mends it stays. */
export function textsOfScript(source: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isNewExpression(node) && /(Error|Fault|ShutOut)$/.test(node.expression.getText())) return;
    if (ts.isImportDeclaration(node)) return;
    if (isText(node) && isProse(node.text)) found.push(node.text);
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile('script.ts', source, ts.ScriptTarget.Latest, true));
  return found;
}

function isText(node: ts.Node): node is ts.LiteralLikeNode {
  return ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node);
}

export function scriptsOf(component: string): string {
  return [...component.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map((match) => match[1]).join('\n');
}

/** Text between the tags, and in spoken attributes, of the HTML that a program writes with `html`. */
export function textsOfHtml(source: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isTaggedTemplateExpression(node) && node.tag.getText() === 'html') {
      const parts = ts.isNoSubstitutionTemplateLiteral(node.template)
        ? [node.template.text]
        : [node.template.head.text, ...node.template.templateSpans.map(({ literal: { text } }) => text)];
      const whole = parts.join('\u{fffc}');
      const heard = [...whole.matchAll(/(?:placeholder|title|alt|aria-label)="([^"]*)"/g)].map(
        (match) => match[1] ?? '',
      );
      found.push(...[...heard, ...whole.replace(/<[^>]*>/g, '\n').split(/[\n\u{fffc}]/u)].filter(hasWord));
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile('script.ts', source, ts.ScriptTarget.Latest, true));
  return found.map((text) => text.trim());
}
