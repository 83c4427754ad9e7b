// A large page opens: node opens.mjs FOLDER BYTES. Prints one line a check and ends with `N passed, N failed`.
import fs from 'node:fs';
import path from 'node:path';
import { browse, fits, open } from './checks.mjs';

const [folder, most] = process.argv.slice(2);
const file = path.resolve(folder, 'report.html');
let failed = 0;
function check(name, problems) {
  if (problems.length > 0) failed += 1;
  console.log(`${problems.length === 0 ? 'ok' : 'FAILED'} ${name}`);
  for (const problem of problems.slice(0, 12)) console.log(`    ${problem}`);
}

const { size } = fs.statSync(file);
check(`the page is ${(size / 1e6).toFixed(2)} MB, below ${most / 1e6} MB`, size < Number(most) ? [] : [`${size} bytes`]);
const browser = await browse();
const { page, seen } = await open(browser, file, { viewport: { width: 360, height: 780 } });
const drawn = await page.evaluate(() => document.querySelectorAll('article').length);
check(`it opens with its ${drawn} hives, silently`, drawn > 0 ? seen : ['no hive is drawn']);
check('it has no sideways scroll', await fits(page));
await browser.close();
console.log(`${3 - failed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
