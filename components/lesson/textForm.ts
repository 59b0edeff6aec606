/* What the pages share that work out a typed, pasted or read text. */

export const item = (name: string, text: string): HTMLElement => {
  const element = document.createElement(name)
  element.textContent = text
  return element
}

/** Works a form's text out when asked to or when a file was read; `work` gives back what is wrong with it. */
export function onText(form: HTMLFormElement, work: (text: string) => readonly string[]): void {
  const area = form.querySelector('textarea')!
  const run = (): void =>
    form
      .querySelector('[data-readings-problems]')!
      .replaceChildren(...work(area.value).map((problem) => item('p', problem)))
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    run()
  })
  form.querySelector<HTMLInputElement>('[type="file"]')!.addEventListener('change', (event) => {
    const file = (event.currentTarget as HTMLInputElement).files?.[0]
    void file?.text().then((text) => {
      area.value = text
      run()
    })
  })
}
