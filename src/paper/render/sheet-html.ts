/** A sheet as one self-contained HTML document that prints in black on A4 or Letter. */
import { failed, ok, type Result } from '../../foundation/index.ts';
import { qrMatrix, qrPath, quietModules } from '../qr.ts';
import type { Block, Cell, Sheet } from '../sheets/sheet.ts';
import { escaped, mm } from './markup.ts';

const style = `
@page{margin:12mm}
*{box-sizing:border-box}
body{font:10.5pt/1.35 "DejaVu Sans",Verdana,Arial,sans-serif;color:#000;background:#fff;margin:0 auto;max-width:190mm}
body.landscape{max-width:275mm}
h1{font-size:18pt;margin:0 0 1mm}
h2{font-size:12.5pt;margin:4mm 0 1.5mm;break-after:avoid}
p{margin:0 0 2mm}
.subtitle{color:#333;margin-bottom:3mm}
ul{margin:0 0 2mm;padding-left:5mm}
li{margin-bottom:.8mm}
.ticks{list-style:none;padding:0}
.ticks li{display:flex;gap:2mm;align-items:baseline;break-inside:avoid;margin-bottom:1.6mm}
.aside{min-width:15mm;text-align:right;color:#333;font-size:9pt}
.box{display:inline-block;flex:none;width:3.4mm;height:3.4mm;border:.35mm solid #000;margin-right:1.2mm;vertical-align:-.4mm}
table{border-collapse:collapse;width:100%;margin-bottom:2mm}
th,td{border:.25mm solid #555;padding:1mm 1.4mm;text-align:left;vertical-align:top}
th{background:#eee;font-size:9.5pt}
tr{break-inside:avoid}
.grid{table-layout:fixed}
.grid td{height:20mm;font-size:8pt;line-height:1.25;padding:.7mm 1mm;overflow-wrap:anywhere}
.grid .box{width:2.6mm;height:2.6mm;margin-right:.8mm}
.strong{font-weight:bold}
.pictures{display:grid;grid-template-columns:repeat(4,1fr);gap:3mm;break-inside:avoid}
.pictures svg{width:100%;height:26mm}
.pictures p{font-size:9pt}
.warnings{border:.5mm solid #000;padding:2mm 3mm;break-inside:avoid;margin-top:2mm}
.warnings h2{margin-top:0}
.qr{display:flex;gap:4mm;align-items:center;break-inside:avoid;margin-top:2mm}
.qr svg{width:32mm;height:32mm;flex:none}
.codes{display:grid;grid-template-columns:repeat(3,46mm) 1fr;gap:3mm;break-inside:avoid;margin-top:2mm}
.codes svg{display:block;width:28mm;height:28mm}
.codes p{font-size:8pt;line-height:1.2;margin:0}
`;

/** The document; refused when a QR code's text is too long. */
export function sheetHtml(sheet: Sheet): Result<string> {
  const blocks = sheet.blocks.map(blockHtml);
  const problems = blocks.flatMap((b) => (b.ok ? [] : b.problems));
  if (problems.length > 0) return failed(...problems);
  const page = sheet.orientation === 'landscape' ? '@page{size:landscape}' : '';
  const head = `<meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${escaped(sheet.title)}</title><style>${style}${page}</style>`;
  const top = `<h1>${escaped(sheet.title)}</h1><p class="subtitle">${escaped(sheet.subtitle)}</p>`;
  const body = blocks.map((b) => (b.ok ? b.value : '')).join('\n');
  return ok(
    `<!doctype html><html lang="${escaped(sheet.language)}"><head>${head}</head><body class="${sheet.orientation}">${top}\n${body}</body></html>`,
  );
}

function blockHtml(block: Block): Result<string> {
  switch (block.kind) {
    case 'heading':
      return ok(`<h2>${escaped(block.text)}</h2>`);
    case 'text':
      return ok(`<p>${escaped(block.text)}</p>`);
    case 'list':
      return ok(listHtml(block.items));
    case 'ticks':
      return ok(`<ul class="ticks">${block.items.map(tickHtml).join('')}</ul>`);
    case 'table':
      return ok(tableHtml(block));
    case 'pictures':
      return ok(
        `<div class="pictures">${block.pictures.map((p) => `<div>${p.svg}<p>${escaped(p.text)}</p></div>`).join('')}</div>`,
      );
    case 'warnings':
      return ok(`<div class="warnings"><h2>${escaped(block.title)}</h2>${listHtml(block.items)}</div>`);
    case 'qr':
      return qrHtml(block.link, block.text);
    case 'codes':
      return codesHtml(block);
  }
}

function listHtml(items: readonly string[]): string {
  return `<ul>${items.map((i) => `<li>${escaped(i)}</li>`).join('')}</ul>`;
}

function tickHtml(item: { text: string; aside?: string }): string {
  const aside = item.aside === undefined ? '' : `<span class="aside">${escaped(item.aside)}</span>`;
  return `<li><span class="box"></span>${aside}<span>${escaped(item.text)}</span></li>`;
}

function tableHtml(block: Extract<Block, { kind: 'table' }>): string {
  const head = `<tr>${block.head.map((h) => `<th>${escaped(h)}</th>`).join('')}</tr>`;
  const rows = block.rows.map((row) => `<tr>${row.map((c) => `<td>${cellHtml(c)}</td>`).join('')}</tr>`);
  return `<table${block.isGrid ? ' class="grid"' : ''}><thead>${head}</thead><tbody>${rows.join('')}</tbody></table>`;
}

function cellHtml(lines: Cell): string {
  return lines
    .map(({ text, hasBox, isStrong }) => {
      const box = hasBox ? '<span class="box"></span>' : '';
      return `<div${isStrong ? ' class="strong"' : ''}>${box}${escaped(text)}</div>`;
    })
    .join('');
}

/** A calendar file of one date, 28 mm wide: modules of about 0.4 mm. */
const mostBytesOfFile = 480;

function codesHtml({ text, codes }: Extract<Block, { kind: 'codes' }>): Result<string> {
  const drawn = codes.map(({ content }) => codeSvg(content, mostBytesOfFile));
  const problems = drawn.flatMap((each) => (each.ok ? [] : each.problems));
  if (problems.length > 0) return failed(...problems);
  const figures = drawn.map(
    (each, i) => `<div>${each.ok ? each.value : ''}<p>${escaped(codes[i]?.caption ?? '')}</p></div>`,
  );
  return ok(`<div class="codes">${figures.join('')}<p>${escaped(text)}</p></div>`);
}

function qrHtml(link: string, text: string): Result<string> {
  const svg = codeSvg(link);
  return svg.ok ? ok(`<div class="qr">${svg.value}<p>${escaped(text)}</p></div>`) : svg;
}

function codeSvg(content: string, mostBytes?: number): Result<string> {
  const matrix = qrMatrix(content, mostBytes);
  if (!matrix.ok) return matrix;
  const side = matrix.value.size + 2 * quietModules;
  const path = qrPath(matrix.value, quietModules, quietModules, matrix.value.size);
  return ok(`<svg viewBox="0 0 ${mm(side)} ${mm(side)}" role="img" aria-label="QR">${path}</svg>`);
}
