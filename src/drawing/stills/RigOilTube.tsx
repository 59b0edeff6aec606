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
      <rect class="support-metal" x="89" y="22" width="6" height={LEVEL} rx="3" />
      <path class="hose" d={`M75 130V${LOW - 10}q0 10 10 10H250`} />
      <path class="metal" d={`M84 ${LOW + 4}h166v8H84z`} />
      <path class="oil-fill" d="M246 272h36v36h-36z" />
      <path class="syringe" d="M246 232v76h36v-76" />
      <path class="detail" d="M270 292h12M270 280h12M270 268h12M270 256h12M270 244h12" />
      <path class="guide" d={`M60 ${LEVEL}H20M250 ${LOW}H20`} />
      <Dimension from={[26, LOW]} to={[26, LEVEL]} text="" state="now" />
      <Words at={[34, 178]} lines={['head', '0.5 m']} tone="now" />
      <Floor from={16} to={344} y={318} />
      <path class="metal" d="M24 308h316v6H24z" />
      <Call
        at={[150, 16]}
        from={[146, 14]}
        to={[92, 34]}
        lines={['thermometer,', '0–60 °C, to 1 °C']}
      />
      <Call
        at={[150, 62]}
        from={[146, 58]}
        to={[100, LEVEL + 4]}
        lines={['funnel, full to', 'the overflow']}
      />
      <Call at={[150, 112]} from={[146, 108]} to={[134, 104]} lines={['overflow, into the tray']} />
      <Call
        at={[150, 166]}
        from={[160, 186]}
        to={[160, LOW - 2]}
        lines={['tube, 4 mm bore, 1 m long,', 'level on a board']}
      />
      <Call
        at={[292, 244]}
        from={[288, 248]}
        to={[278, 262]}
        lines={['cylinder,', '0–100', 'cm³, to 1']}
      />
      <g>
        <circle class="support-metal" cx="218" cy="282" r="15" />
        <circle class="support-hole" cx="218" cy="282" r="11" />
        <path class="detail" d="M218 282v-8M218 267v-5M213 262h10" />
      </g>
      <Call
        at={[84, 248]}
        from={[178, 258]}
        to={[205, 275]}
        lines={['stop watch,', 'good to 0.2 s']}
      />
      <Call at={[48, 288]} from={[66, 292]} to={[60, 309]} lines={['tray under all of it']} />
    </Frame>
  )
}
