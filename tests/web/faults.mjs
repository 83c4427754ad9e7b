// Proves that the checks can fail: node faults.mjs FOLDER
// Writes pages with one fault each to the folder; every one must be found by its check, and a sound page by none.
import fs from 'node:fs';
import path from 'node:path';
import { accessible, anchors, browse, drawings, figures, fits, open, sheets, units, valid } from './checks.mjs';

const folder = path.resolve(process.argv[2]);
fs.mkdirSync(folder, { recursive: true });

const page = (body, style = '') => '<!DOCTYPE html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n'
  + `<meta name="viewport" content="width=device-width, initial-scale=1">\n<title>Hives</title>\n<style>${style}</style>\n</head>\n`
  + `<body>\n<main>\n<h1>Hives</h1>\n${body}\n</main>\n</body>\n</html>\n`;

const row = (hive, split) => `<div class="sheet-row"><div><strong>${hive}</strong><ul><li style="margin-top:${split}cm">`
  + `look into ${hive}</li></ul></div></div>`;
const sheet = (hives, split) => '<section class="sheet" aria-label="sheet"><div class="sheet-head"><h2>Take it to the yard</h2></div>\n'
  + hives.map((hive) => row(hive, split)).join('\n') + '</section>';
const drawing = (words) => page(`<figure><svg viewBox="0 0 340 40" role="img" aria-label="flow">${words}</svg></figure>`);
const kept = '.sheet{display:table;width:100%;break-before:page}.sheet-head{display:table-header-group;break-inside:avoid}'
  + '.sheet-row{display:table-row;break-inside:avoid}'
  + '.sheet-row>div{display:table-cell}';
const four = ['one', 'two', 'three', 'four'];

// Looks at one page as the report is looked at, on a phone.
async function looked(browser, name, html) {
  const file = path.join(folder, `${name}.html`);
  fs.writeFileSync(file, html);
  const { context, page: opened, seen } = await open(browser, file, { viewport: { width: 360, height: 780 } });
  const found = {
    valid: await valid(html), fits: await fits(opened), anchors: await anchors(opened), figures: await figures(opened),
    units: await units(opened), drawings: await drawings(opened), accessible: await accessible(opened),
    sheets: await sheets(opened, 'A4', path.join(folder, `${name}.pdf`)), seen,
  };
  await context.close();
  return found;
}

// Name, page, the check that must find it, and a word of what it must say.
const faults = [
  ['contrast', page('<p style="color:#999;background:#fff">Put a super on.</p>'), 'accessible', 'color-contrast'],
  ['unlabelled', page('<p><input type="text"></p>'), 'accessible', 'label'],
  ['no-language', page('<p>Put a super on.</p>').replace(' lang="en"', ''), 'accessible', 'html-has-lang'],
  ['picture', page('<p><img src="data:image/gif;base64,R0lGODlhAQABAAAAACw="></p>'), 'accessible', 'image-alt'],
  ['network', page('<p><img alt="" src="http://127.0.0.1:9/a.png"></p>'), 'seen', 'request'],
  ['script', page('<script>throw new Error("torn")</script>'), 'seen', 'torn'],
  ['console', page('<script>console.error("said")</script>'), 'seen', 'said'],
  ['sideways', page('<p style="width:700px">Put a super on.</p>'), 'fits', 'px wide'],
  ['dead-link', page('<p><a href="#l0-7">mill.hive:7</a></p>'), 'anchors', '#l0-7'],
  ['markup', page('<p><div>Put a super on.</div></p>'), 'valid', ''],
  ['twice', page('<p id="a">one</p><p id="a">two</p>'), 'valid', 'no-dup-id'],
  ['no-lines', page('<p>room for 12.5 kg (9.1-15.0)</p>'), 'figures', '12.5 kg'],
  ['no-unit', page('<dl><dt>extracted</dt><dd>64.80</dd></dl>'), 'units', '64.80'],
  ['cut-word', drawing('<text x="-20" y="20">heavy</text>'), 'drawings', 'cut off'],
  ['tiny-word', drawing('<text style="font-size:6px" x="20" y="20">heavy</text>'), 'drawings', 'px high'],
  ['word-on-word', drawing('<text x="20" y="20">heavy</text><text x="30" y="22">light</text>'), 'drawings', 'lies on'],
  ['torn-hive', page(sheet(four, 11), kept.replace('table-row;break-inside:avoid', 'table-row')), 'sheets', 'on 0 leaves'],
  ['no-head', page(sheet(four, 8), kept.replace('table-header-group', 'block')), 'sheets', 'on 0 leaves'],
];

let passed = 0;
let failed = 0;
function check(name, right, found) {
  if (right) passed += 1;
  else failed += 1;
  console.log(`${right ? 'ok' : 'FAILED'} ${name}`);
  if (!right) console.log(`    ${JSON.stringify(found).slice(0, 600)}`);
}

const browser = await browse();
const sound = await looked(browser, 'sound', page('<p>room for 12.5 kg (9.1-15.0)'
  + ' <span class="ref"><a href="#l0-7">mill.hive:7</a></span></p>\n<p id="l0-7">h3 top 70% capped <a href="#l0-7">mill.hive:7</a></p>\n' + sheet(four, 8), kept));
check('a sound page is found sound', Object.values(sound).every((problems) => problems.length === 0), sound);
for (const [name, html, by, word] of faults) {
  const found = await looked(browser, name, html);
  check(`a page with a fault is found out: ${name}`, found[by].length > 0 && found[by].some((problem) => problem.includes(word)), found);
}
await browser.close();
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
