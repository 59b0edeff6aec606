import type { JSX } from 'preact'
import { isRight } from '../../src/worksheet/pose.ts'
import type { Settings } from '../../src/worksheet/settings.ts'
import type { Sheet } from '../../src/worksheet/sheet.ts'
import { queryOf } from '../../src/worksheet/settings.ts'
import { letterOf } from './letters.ts'

interface KeyProps {
  sheet: Sheet
  settings: Settings
  shown: boolean
}

/** The key, on pages of its own. Nothing of it is in the page until it is asked for. */
export function Key({ sheet, settings, shown }: KeyProps): JSX.Element | null {
  if (!shown) return null
  return (
    <section class="worksheet-key" data-key aria-labelledby="key-title">
      <h2 id="key-title">Key to worksheet {settings.seed}</h2>
      <p class="worksheet-how">
        For the trainer. The same sheet comes again from <code>worksheets/{queryOf(settings)}</code>
      </p>
      <ol class="worksheet-questions">
        {sheet.questions.map(({ topicTitle, exercise, options, because }, index) => {
          const place = options.findIndex(isRight)
          return (
            <li key={`${exercise}-${index}`}>
              <p>
                <b data-right={letterOf(place)}>
                  {letterOf(place).toUpperCase()} {options[place]!.text}.
                </b>{' '}
                {because} <small>{topicTitle}</small>
              </p>
              <ul class="worksheet-ideas">
                {options.map(
                  ({ text, idea }, at) =>
                    idea !== undefined && (
                      <li key={text}>
                        <b>{letterOf(at).toUpperCase()}</b> {text}: {idea}
                      </li>
                    ),
                )}
              </ul>
            </li>
          )
        })}
      </ol>
    </section>
  )
}
