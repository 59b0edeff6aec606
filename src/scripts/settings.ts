import { IMPERIAL, METRIC, readUnitChoice } from '../units/choice.ts'
import type { UnitChoice } from '../units/choice.ts'
import { loadUnitChoice, saveUnitChoice } from '../units/choiceStore.ts'

/* Units and theme, switched in one place and kept. */

const THEME = 'witness-mark.theme'

function remembered(key: string): string {
  try {
    return localStorage.getItem(key) ?? ''
  } catch {
    return ''
  }
}

function applyTheme(theme: string): void {
  if (theme === 'light' || theme === 'dark') document.documentElement.dataset['theme'] = theme
  else delete document.documentElement.dataset['theme']
}

applyTheme(remembered(THEME))

const panel = document.querySelector<HTMLDetailsElement>('[data-settings]')
const unitSelects = [...document.querySelectorAll<HTMLSelectElement>('[data-unit]')]

function show(choice: UnitChoice): void {
  for (const select of unitSelects)
    select.value = choice[select.dataset['unit'] as keyof UnitChoice]
}

function choose(choice: UnitChoice): void {
  saveUnitChoice(choice)
  show(choice)
}

show(loadUnitChoice())
for (const select of unitSelects) {
  select.addEventListener('change', () =>
    choose(
      readUnitChoice(
        Object.fromEntries(unitSelects.map((each) => [each.dataset['unit'], each.value])),
      ),
    ),
  )
}
for (const button of document.querySelectorAll<HTMLButtonElement>('[data-system]')) {
  button.addEventListener('click', () =>
    choose(button.dataset['system'] === 'imperial' ? IMPERIAL : METRIC),
  )
}

const themeSelect = document.querySelector<HTMLSelectElement>('[data-theme-choice]')
if (themeSelect) {
  themeSelect.value = remembered(THEME)
  themeSelect.addEventListener('change', () => {
    try {
      localStorage.setItem(THEME, themeSelect.value)
    } catch {
      // not kept, but this page switches
    }
    applyTheme(themeSelect.value)
  })
}

panel?.addEventListener('keydown', (event) => {
  if (event.key !== 'Escape') return
  panel.open = false
  panel.querySelector('summary')?.focus()
})
document.addEventListener('click', (event) => {
  if (panel?.open && event.target instanceof Node && !panel.contains(event.target))
    panel.open = false
})
