import { Press } from './SpringTest.tsx'

/* The press of a class: every part named, each instrument with its range. */
export default function RigPress() {
  return (
    <Press
      words={{
        guard: ['guard, closed', 'and latched'],
        pointer: ['pointer; rule', '500 mm, to 0.5'],
        rod: ['guide rod,', 'slides freely'],
        display: ['scale’s display,', '100 kg, to 0.1'],
        block: ['gauge block,', 'pointer set to it'],
        also: {
          screw: 'screw',
          plate: 'upper plate',
          spring: 'spring',
          scale: ['lower plate, with the', 'scale under it'],
        },
      }}
    />
  )
}
