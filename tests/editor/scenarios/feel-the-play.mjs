// Play and load in the text and beside it: hints behind the values, tables under conditions, builds that follow later.
import assert from 'node:assert/strict';

export const title =
  'a wheelbuilder reads play and load beside the text, turns the clamp and the temperature, and sees how builds spread';

export async function run({ user }) {
  const { page } = user;
  await user.open('dunlin-front.hub.yaml');
  // Behind the code, the spacer and the clamp.
  await page
    .locator('.view-line', { hasText: /6803-2RS.*mounted.−?\d+.µm/ })
    .first()
    .waitFor();
  await page
    .locator('.view-line', { hasText: /62\.06.*play.−?\d+.µm/ })
    .first()
    .waitFor();

  await user.command('Hubwright: Open Section Beside');
  const preview = user.preview();
  await preview.locator('#pairs tbody tr').first().waitFor();
  const cell = (table, name) =>
    preview.locator(`#${table} tbody tr`).first().locator(`td[data-title="${name}"]`);
  const micrometres = async (table, name) =>
    Number(/−?\d+/.exec(await cell(table, name).textContent())?.[0].replace('−', '-'));

  // The builds come by themselves, after the drawing.
  await preview.locator('#builds figcaption', { hasText: 'Of 20 000 builds' }).waitFor();
  assert.equal((await preview.locator('#builds svg .hw-solid').count()) > 5, true);

  // Without a clamp the play in the fork is that on the bench.
  await preview.locator('#clamp').focus();
  const written = await preview.locator('#clamp').inputValue();
  await page.keyboard.press('Home');
  await cell('pairs', 'Clamp shortens')
    .filter({ hasText: /^0 µm$/ })
    .waitFor();
  assert.equal(await micrometres('pairs', 'Clamped'), await micrometres('pairs', 'Play on the bench'));
  assert.equal(await preview.locator('#clamp-said').textContent(), '0.0 kN');

  // Two steps of the arrow key are 200 N.
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await preview.locator('#clamp-said', { hasText: '0.2 kN' }).waitFor();

  // A warm aluminium shell lets go of its rings and gives clearance back.
  await preview.locator('#as-written').click();
  await preview.locator('#clamp-said', { hasText: 'as written' }).waitFor();
  assert.equal(await preview.locator('#clamp').inputValue(), written);
  assert.equal(await preview.locator('#as-written').isDisabled(), true);
  const cool = await micrometres('bearings', 'Mounted clearance');
  await preview.locator('#temperature').focus();
  await page.keyboard.press('End');
  await preview.locator('#temperature-said', { hasText: '80 °C' }).waitFor();
  await preview
    .locator('#bearings tbody tr')
    .first()
    .locator('td[data-title="Mounted clearance"]')
    .filter({ hasNotText: new RegExp(`^${String(cool).replace('-', '−')} µm`) })
    .waitFor();
  assert.ok(cool < (await micrometres('bearings', 'Mounted clearance')));
  await user.screenshot('play-warm');

  // Another hub starts at the bench again. The panel stays where it is when the text has the focus.
  await page.locator('.view-line').first().click();
  await user.open('plover-rear.hub.yaml');
  await preview.locator('#title', { hasText: 'Plover rear' }).waitFor();
  assert.equal(await preview.locator('#temperature').inputValue(), '20');
  assert.equal(await preview.locator('#pairs tbody tr').count(), 2);
  await preview.locator('#builds figure').nth(1).waitFor();
  await user.screenshot('play-rear');
}
