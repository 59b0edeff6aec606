/** The line under each picture of a step: the point that it makes. */
export const captions: Readonly<Record<string, string>> = {
  'fork-section':
    'From the cap down: adjuster, spacer, washer, spring. Each pushes on the next. Lengths to scale, widths enlarged. Your fork’s manual gives its order.',
  'fork-kinds':
    'The common kinds, cut open. From outside much of it looks the same, so the manual says which one this is and what each leg holds.',
  washer:
    'A washer of 36 mm in a bore of 38 mm can tilt and catch. The spacer then sits proud, as if there were more preload.',
  marks:
    'The mark is the exposed tube between two edges that do not move on their parts. Use the same two edges for every later reading.',
  'reading-places':
    '1 exposed tube, dust seal to yoke. 2 tube above the upper yoke. 3 rear axle to a line on the tail. 4 wheelbase, axle to axle along the floor.',
  spacer:
    'What stands above the seat (3), plus the cap’s reach (2), is the preload: the cap pushes the spacer down by that much. To scale.',
  'oil-height':
    'Oil height counts down from the rim, so a smaller height is more oil. Leg upright, pushed together, spring out, unless the manual says otherwise.',
  adjuster:
    'One turn in pushes the spacer down by one pitch of the thread. It moves the bike along its travel and leaves the rate alone.',
  'sag-lengths':
    'Exposed tube, to scale on one line of seals. The band lies between the reading after a push down and the one after a lift; sag counts to its middle.',
  yokes:
    'Measure to the tube’s edge, on both legs. If you include part of the cap, you are out by several millimetres.',
  'rear-marks':
    'The line is straight above the axle, on a part bolted to the frame. There the length changes by as much as the wheel moves.',
  clickers:
    'Fully in is the first light stop, where the needle meets its seat. Clicks are counted out from there. Your manual says where each screw is.',
  'lock-to-lock':
    'At each lock a thumb fits between grip and tank, and every hose and cable stays slack. Engine off.',
  clearance:
    'At full travel the wheel stands higher by the whole travel, along the fork. A tube raised in its yokes takes as much again from the gap.',
  'spring-test':
    'Zero the pointer on a gauge block, put the spring in, close and latch the guard, and only then turn the screw. Length and load are both read from outside; the guard stays shut until the spring is free again.',
  'motion-ratio':
    'Both lengths are read at one moment, wherever the rear stops. Shock movement divided by wheel movement is the motion ratio.',
  levels:
    'A floor may be level where the level stands and slope where the wheels stand. Read under both, and turn the level end for end.',
  chain:
    'Slack is the whole movement of the lower run at its middle, up and down, at the tightest place of the chain.',
  weigh:
    'Both wheels stand equally high, or the front reads light. The stops on the scale are on it when you zero it, and touch no tyre while you read.',
  'front-hung-for-fork-work':
    'Two stands carry the frame tubes, one on each side, and two straps run from the frame to a strong point above or beside it. Nothing is tied to the yokes, because they turn and come apart. The rear is on its paddock stand, the stand’s wheels chocked. Where exactly the frame may rest, the maker’s manual says.',
  'front-hung-for-sag':
    'The frame is held, the rear is on its paddock stand, and the front wheel hangs by its own weight, clear of the floor. Anything under the tyre, the axle or the fork pushes the fork in, so the hanging length reads short and the sag too small.',
  'tyre-on-a-board':
    'The stands and straps carry the frame, and the front tyre carries wheel and fork only, so the wheel can be moved and the frame stays. One lifts, the other pushes the board in or draws it out, and no hand goes under the tyre.',
  'rear-hung-by-the-frame':
    'The frame is held, and the rear wheel hangs free. A paddock stand under the axle or the swing arm won’t do: the spring would still carry the bike. The front wheel is chocked and its brake tied on.',
  'bike-held-upright':
    'Both wheels on the floor, and nothing but hands holds it. The helper in front (1) keeps both hands on the bar and the bike upright, because a lean of a few degrees already pulls hard. A rider sits at 2, if the step wants one, and the reader kneels beside the fork (3), free to step back.',
  'weigh-platform':
    'The platform is at least as long as the wheel is high. A stop in front of each tyre and one behind it leave a finger’s width, so they catch a wheel that rolls and touch nothing while you read. The side straps are hooked on before a brake is let go.',
  'axle-clamp-and-bounce':
    'Tighten the axle first, pump the fork, and only then close the pinch bolts. While they are loose, the foot slides along the axle to where the legs are parallel and nothing binds.',
  'slotted-plate-and-nut':
    'The plate sits between spacer and locknut, so the spring can’t push the spacer up over the nut, and the rod hangs on it. Hold the spacer down with its tool and the plate by its end: fingers stay out of that gap.',
  'calipers-tied-up':
    'Each caliper hangs from the frame by a tie, never by its hose. A slip of wood keeps the pads apart, and the lever is blocked, because each pull would push the pistons out.',
  'rod-puller':
    'A thin rod with a handle, its thread the same as the cartridge rod’s, draws the rod up and keeps it from sinking while spring and spacer go down over it.',
  'fork-outside-kinds':
    'Caps and feet as you meet them, with the screws that look alike. These are hints: some forks of a kind lack its sign, so the manual has the last word.',
}
