// A plain road bike drawn from its right side, in millimetres of its own frames: no figure of any bike, and no bike of any maker, is in it. It has
// a double-cradle frame, so that the two tubes under the engine can be seen to carry a stand. The chassis frame: x forward from the rear axle and z
// up from the ground with both springs extended; the fork's frame: ahead of the leg and up the leg, from the front axle or from the lower yoke.

interface Point {
  x: number
  z: number
}

/** Places on the chassis that pictures hang a stand, a strap or a line on [mm, chassis frame]. */
export const POINTS = {
  pivot: { x: 540, z: 390 },
  /** the gusset between steering head and frame tubes: a strap's place at the front */
  headGusset: { x: 1106, z: 826 },
  /** the underside of the cradle's tube, ahead of the weight and behind it */
  railFront: { x: 934, z: 223 },
  railRear: { x: 650, z: 223 },
  /** where seat tube and seat rail meet: a strap's place at the rear */
  seatJunction: { x: 470, z: 790 },
  sump: { x: 790, z: 262 },
  silencer: { x: 330, z: 236 },
  shockHead: { x: 452, z: 742 },
  shockFoot: { x: 374, z: 398 },
  tailLine: { x: 0, z: 862 },
  grip: { x: 1058, z: 1038 },
  seat: { x: 600, z: 846 },
  peg: { x: 636, z: 372 },
} as const satisfies Readonly<Record<string, Point>>

/** Frame tubes: a centre line and a diameter [mm]. */
export const FRAME: readonly (readonly [path: string, width: number])[] = [
  ['M690 706L60 822', 26],
  ['M562 430L452 742', 24],
  ['M1150 876C1060 832 960 790 860 762C780 742 720 724 672 700C600 650 566 560 556 440', 40],
  ['M1196 762L1076 372C1048 270 1010 240 930 240L650 240C578 240 546 282 548 400', 34],
]

export const CHASSIS = {
  head: 'M1090 928L1162 962L1240 792L1168 758Z',
  gusset: 'M1164 770L1086 800L1062 846L1120 880Z',
  pivotPlate: 'M518 330L588 330L600 446L556 486L516 452Z',
  engine:
    'M606 452C596 396 600 318 640 286L700 262L884 262C968 262 1016 300 1014 372L1000 470L704 486C650 486 612 482 606 452Z',
  sump: 'M690 268L704 250L860 250L878 268Z',
  cylinder: 'M756 486L976 462L1006 650L800 676Z',
  fins: 'M752 514L990 486M758 546L996 518M766 578L1000 550M772 610L1006 580M780 642L1010 612',
  cover:
    'M792 678C788 668 794 662 804 660L1002 634C1012 632 1020 638 1022 650L1028 690C1030 704 1022 712 1010 714L836 738C818 740 804 732 800 716Z',
  pipe: 'M1012 676C1072 676 1078 600 1060 500C1040 392 1010 292 930 292L500 284',
  silencer:
    'M560 306L500 322L190 310C156 306 142 290 140 270C140 248 154 234 182 232L500 240L560 260Z',
  silencerBand: 'M500 322L500 240M190 310L182 232',
  airBox:
    'M660 716L520 752C490 758 478 742 486 716L556 566C568 542 600 540 620 558L690 622C712 642 706 704 660 716Z',
  tank: 'M1118 902C1112 962 1056 1006 984 1006C900 1004 832 960 780 884C764 852 774 832 800 828L1030 838C1082 846 1116 868 1118 902Z',
  tankSeam: 'M786 864C880 852 1010 866 1104 896M956 1006C962 1026 1010 1026 1018 1004',
  seat: 'M784 872C736 844 688 838 618 844C500 852 360 874 220 894C170 901 120 908 92 900C80 890 84 872 98 866C240 834 420 800 620 788C690 784 752 800 780 828Z',
  seatSeam: 'M90 888C260 850 440 820 620 810C690 806 740 816 782 846',
  tail: 'M648 792C480 800 260 830 98 866L-28 890L-56 868L-42 838C120 808 400 754 612 726Z',
  lamp: 'M-44 884L-72 866L-66 832L-40 838Z',
  guard: 'M60 812C-10 792 -94 752 -142 664L-160 674C-116 774 -40 832 40 842Z',
  plate: 'M-130 702L-166 716L-200 622L-164 608Z',
  instruments: 'M1128 994L1176 960L1196 986L1150 1020Z',
  lampBracket: 'M1212 846L1262 868L1254 894L1200 872ZM1166 942L1246 912L1252 932L1176 962Z',
  headlamp:
    'M1240 946C1268 966 1310 952 1324 906C1336 862 1318 826 1288 822C1254 826 1232 858 1228 890C1226 914 1228 934 1240 946Z',
  lens: 'M1292 950C1322 928 1332 856 1290 822',
  bars: 'M1146 950C1150 990 1156 1020 1142 1040C1132 1052 1118 1050 1100 1046',
  grip: 'M1112 1050L1010 1030',
  lever: 'M1150 1022C1128 1012 1080 1004 1024 990',
  reservoir: 'M1112 1064L1152 1072L1146 1100L1106 1092Z',
  peg: 'M600 372L672 372',
}

/** Round covers of the engine, and the rings in them [mm]. */
export const COVERS: readonly (readonly [x: number, z: number, r: number, plain: boolean])[] = [
  [748, 386, 100, false],
  [748, 386, 66, true],
  [924, 366, 66, false],
  [924, 366, 38, true],
]

/** Height along the leg from the axle [mm]: the slider's top, where the dust seal sits. */
export const SEAL = 345

/** The slider with what is bolted to it, in the fork's frame from the axle. */
export const LOWERS = {
  slider: `M-30 -24C-30 -40 30 -40 30 -24L30 ${SEAL - 24}L36 ${SEAL - 22}L36 ${SEAL}L-36 ${SEAL}L-36 ${SEAL - 22}L-30 ${SEAL - 24}Z`,
  sliderLine: `M-36 ${SEAL - 22}L36 ${SEAL - 22}M14 -18L14 ${SEAL - 30}`,
  caliper: 'M-30 88L-104 104L-124 150L-108 198L-60 208L-30 190Z',
  caliperLine: 'M-100 126L-46 116M-100 172L-44 176',
  guardStays: 'M-20 220L-136 292M0 232L64 312',
}

/** Distance between the yokes, and the tube above the upper one [mm]. */
export const YOKES = 185
const yoke = (at: number): string =>
  `M-64 ${at - 15}L28 ${at - 15}C36 ${at - 15} 36 ${at + 15} 28 ${at + 15}L-64 ${at + 15}C-74 ${at + 15} -74 ${at - 15} -64 ${at - 15}Z`
/** Both yokes, in the fork's frame from the lower one. */
export const YOKE_PATH = `${yoke(0)}${yoke(YOKES)}`
