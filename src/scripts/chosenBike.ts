import { CHOSEN_EVENT, chosenBike } from '../record/store/chosen.ts'

/* Shows in the header which bike is chosen, once there is one. */

const chip = document.querySelector<HTMLAnchorElement>('[data-bike-chosen]')

function show(): void {
  const bike = chosenBike()
  if (!chip || (bike === null && chip.hidden)) return
  chip.hidden = bike === null
  chip.textContent = bike?.name ?? ''
  if (bike) chip.search = `?bike=${bike.id}`
}

show()
document.addEventListener(CHOSEN_EVENT, show)
addEventListener('storage', show)
addEventListener('pageshow', show)
