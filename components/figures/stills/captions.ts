/** The line under each picture of a step: the point that it makes. */
export const captions: Readonly<Record<string, string>> = {
  'fork-section':
    'From the cap down: adjuster, spacer, washer, spring. Each pushes on the next. Lengths to scale, widths enlarged. Your fork’s order stands in its manual.',
  washer: 'A washer of 36 mm in a bore of 38 mm can tilt and catch. It then holds the spacer up, and reads like preload that is not there.',
  marks: 'The mark is the bare tube between two edges that do not move on their parts. The same two edges serve every later reading.',
  'support-points': 'Three feet on the floor, well apart, and a strap for the pull that you did not expect. No foot bears on the exhaust or the sump.',
  'reading-places':
    '1 bare tube, dust seal to yoke. 2 tube above the upper yoke. 3 rear axle to a line on the tail. 4 wheelbase, axle to axle along the floor.',
  spacer: 'What stands above the seat (3), plus the cap’s reach (2), is the preload: the cap pushes the spacer down by that much. To scale.',
  'oil-height':
    'Oil height counts down from the rim, so a smaller height is more oil. Leg upright, pushed together, spring out, unless the manual says otherwise.',
  adjuster: 'One turn in pushes the spacer down by one pitch of the thread. It moves the bike along its travel and leaves the rate alone.',
  'sag-lengths':
    'Bare tube, to scale on one line of seals. The band lies between the reading after a push down and the one after a lift; sag counts to its middle.',
  yokes: 'Measure to the tube’s edge, on both legs. A quarter of a cap’s height read with the tube is several millimetres.',
  'rear-marks': 'The line stands straight above the axle, on a part bolted to the frame. There the length changes by as much as the wheel moves.',
  clickers: 'Fully in is the first light stop, where the needle meets its seat. Clicks are counted out from there. Your manual says where each screw sits.',
  'lock-to-lock': 'At each lock a thumb fits between grip and tank, and every hose and cable stays slack. Engine off.',
  clearance: 'At full travel the wheel stands higher by the whole travel, along the fork. A tube raised in its yokes takes as much again from the gap.',
  'spring-test': 'Length counts between the two plates that touch the spring. The guard is latched before the screw turns.',
  'motion-ratio': 'Both lengths are read at one moment, wherever the rear stops. Shock movement divided by wheel movement is the motion ratio.',
  levels: 'A floor may be level where the level stands and slope where the wheels stand. Read under both, and turn the level end for end.',
  chain: 'Slack is the whole movement of the lower run at its middle, up and down, at the tightest place of the chain.',
  weigh: 'Both wheels stand equally high, or the front reads light. Raised, the load moves forward, and how much tells the height of the centre of gravity.',
}
