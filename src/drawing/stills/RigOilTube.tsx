import { Dimension } from '../Dimension.tsx'
import { Call, Floor, Frame, Words } from './parts.tsx'

const [LEVEL, LOW] = [74, 214]

export default function RigOilTube() {
  return (
    <Frame
      height={336}
      label="A funnel with an overflow is kept full. From its foot a clear tube of 4 millimetres bore and one metre length runs down and then level along a board. Its open end, half a metre below the oil in the funnel, drips into a measuring cylinder. A tray stands under everything."
    >
      <path class="oil-fill" d={`M42 ${LEVEL}h66l-26 40h-14z`} />
      <path class="syringe" d="M36 62l32 52v16M114 62l-32 52v16" />
      <path class="detail" d={`M112 ${LEVEL - 8}h22v44`} />
      <path class="hose" d={`M75 130V${LOW - 10}q0 10 10 10H250`} />
      <path class="metal" d={`M84 ${LOW + 4}h166v8H84z`} />
      <path class="oil-fill" d="M246 272h36v36h-36z" />
      <path class="syringe" d="M246 232v76h36v-76" />
      <path class="detail" d="M270 292h12M270 280h12M270 268h12M270 256h12M270 244h12" />
      <path class="guide" d={`M60 ${LEVEL}H20M250 ${LOW}H20`} />
      <Dimension from={[26, LOW]} to={[26, LEVEL]} text="" state="now" />
      <Words at={[34, 178]} lines={['head']} tone="now" />
      <Floor from={16} to={344} y={318} />
      <path class="metal" d="M24 308h316v6H24z" />
      <Call
        at={[150, 28]}
        from={[146, 26]}
        to={[92, 70]}
        lines={['thermometer and oil,', 'full to the overflow']}
      />
      <Call
        at={[170, 104]}
        from={[166, 100]}
        to={[134, 104]}
        lines={['overflow, into', 'the tray']}
      />
      <Call
        at={[150, 166]}
        from={[160, 186]}
        to={[160, LOW - 2]}
        lines={['tube, 4 mm bore, 1 m long,', 'level on a board']}
      />
      <Call at={[296, 250]} from={[292, 248]} to={[278, 262]} lines={['cylinder,', '100 cm³']} />
      <Call at={[96, 290]} from={[92, 288]} to={[60, 309]} lines={['tray under', 'everything']} />
    </Frame>
  )
}
