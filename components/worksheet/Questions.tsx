import type { JSX } from 'preact'
import type { BikeSheets } from '../../src/bikes/sheet.ts'
import type { Settings } from '../../src/worksheet/settings.ts'
import type { Sheet } from '../../src/worksheet/sheet.ts'
import { BikeData } from './BikeData.tsx'
import { letterOf } from './letters.ts'

interface QuestionsProps {
  sheet: Sheet
  settings: Settings
  bikes: BikeSheets
}

/** What the class gets: no answer is in it. */
export function Questions({ sheet, settings, bikes }: QuestionsProps): JSX.Element {
  return (
    <article class="worksheet" aria-labelledby="sheet-title">
      <header>
        <h2 id="sheet-title">Worksheet {settings.seed}</h2>
        <p class="worksheet-name">
          Name <span class="rule-blank"></span> Date <span class="rule-blank short"></span>
        </p>
      </header>
      <p class="worksheet-how">
        Ring one letter for each question. Only one answer is right; write your sum beside it.
      </p>
      {sheet.short && (
        <p class="worksheet-short" role="status">
          {sheet.short}
        </p>
      )}
      <ol class="worksheet-questions">
        {sheet.questions.map((posed, index) => (
          <li key={`${posed.exercise}-${index}`} data-question={`${posed.topic}/${posed.exercise}`}>
            <p>{posed.text}</p>
            <ol class="worksheet-options" role="list">
              {posed.options.map(({ text }, place) => (
                <li key={text} data-option={letterOf(place)}>
                  <b>{letterOf(place).toUpperCase()}</b> {text}
                </li>
              ))}
            </ol>
          </li>
        ))}
      </ol>
      <BikeData sheet={sheet} settings={settings} bikes={bikes} />
      <p class="worksheet-from">
        Witness Mark, worksheet {settings.seed}. Torques, oil quantities and what the law allows are
        in the maker’s manual and your country’s rules, not here.
      </p>
    </article>
  )
}
