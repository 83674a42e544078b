import { readFileSync } from 'node:fs';
import { workFor } from '../src/desk/acts.ts';
import { runWork } from '../src/desk/runWork.ts';
import { startServer } from '../src/preview/server/server.ts';
import { openStandIn } from '../src/preview/standin/openStandIn.ts';
import { layoutVersion } from '../src/workbook/layout.ts';
import { setup } from '../tests/host/setup.ts';
import { launchBrowser } from './launchBrowser.ts';

let day = '02';
const host = openStandIn({
  code: readFileSync('dist/Code.js', 'utf8'),
  sidebarHtml: readFileSync('dist/Sidebar.html', 'utf8'),
  name: 'Invented',
  clock: () => new Date(`2026-03-${day}T10:00:00Z`),
});
const run = (name: any, ...about: any[]) =>
  runWork(workFor({ book: undefined }, name, about as never), ({ call, wish }: any) =>
    host.run('teacher', call, wish === undefined ? [layoutVersion] : [layoutVersion, wish]),
  ) as any;
let state = run('startBuild', setup, {});
while (!state.value.finished) state = run('continueBuild');
const fern = host.book.sheets.find(({ name }) => name === 'Fern class')!;
for (let row = 1; row < 80; row += 1)
  if (host.book.value(fern, row, 12) === 'c1-t1' && host.book.value(fern, row, 13) === 'molar mass')
    host.type('student', [{ sheet: fern.id, row, column: 3, text: '119.0' }]);
day = '09';
const server = await startServer({ host });
const browser = await launchBrowser();
const out = process.argv[2] ?? '/tmp/labrow/shots-lessons';
try {
  const context = await browser.newContext({
    viewport: { width: 1366, height: 1000 },
    colorScheme: 'light',
    locale: 'en-US',
  });
  const page = await context.newPage();
  await page.goto(`${server.url}/`);
  await page.getByRole('button', { name: 'Labrow' }).click();
  await page.getByRole('menuitem', { name: 'Open the sidebar' }).click();
  const sidebar = page.frameLocator('#panel iframe');
  let presses = 0;
  const press = async (name: string) => {
    await sidebar.getByRole('button', { name, exact: true }).click();
    presses += 1;
  };
  await press('Before class');
  await sidebar.getByRole('button', { name: 'Next lesson' }).waitFor();
  await page.screenshot({ path: `${out}-plan.png` });
  await press('Next lesson');
  await sidebar.getByText('For which classes').waitFor();
  await page.screenshot({ path: `${out}-next.png` });
  await sidebar.getByLabel('Moss class').uncheck();
  await page.screenshot({ path: `${out}-next2.png` });
  await press('Build the next lesson');
  await sidebar.getByText('The table is built').waitFor({ timeout: 120000 });
  console.log('presses', presses);
  await page.screenshot({ path: `${out}-built.png` });
  await sidebar.getByRole('button', { name: /plan/i }).last().click();
  await sidebar.getByLabel('Lesson').waitFor();
  await page.screenshot({ path: `${out}-two.png` });
  await press('Open an earlier one');
  await sidebar.getByText('Lessons that were put away').waitFor();
  await page.screenshot({ path: `${out}-earlier.png` });
  await page.getByRole('tab', { name: 'Progress' }).click();
  await page.waitForTimeout(500);
  await page.screenshot({ path: `${out}-progress.png` });
} finally {
  await browser.close();
  await server.close();
}
