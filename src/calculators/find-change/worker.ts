import { lastAlone } from '../../machine/away.ts'
import type { Question } from '../../machine/away.ts'
import answer from './answer.ts'

const take = lastAlone(answer, postMessage, (call) => setTimeout(call))

addEventListener('message', ({ data }: MessageEvent<Question>) => take(data))
