/** `npm run bench`: every figure, or the one that is named, as in `npm run bench -- games-list`. */
import { WayOut, command } from '../../server/commands/terminal.mjs'
import { billingRun } from './billing-run.mjs'
import { boardsAgainstSql, boardsAmong } from './boards.mjs'
import { changeSet } from './change-set.mjs'
import { deliveryStatement } from './delivery-statement.mjs'
import { deskBundle } from './desk-bundle.mjs'
import { deskPaint } from './desk-paint.mjs'
import { deskScript } from './desk-script.mjs'
import { deskTap } from './desk-tap.mjs'
import { fulfillment } from './fulfillment.mjs'
import { gamesList } from './games-list.mjs'
import { invoicePdf } from './invoice-pdf.mjs'
import { logBatches } from './log-batches.mjs'
import { aging, trialBalance } from './money-books.mjs'
import { nightDesk } from './night-desk.mjs'
import { packet } from './packet.mjs'
import { planByHand } from './plan-by-hand.mjs'
import { planCompany } from './plan-company.mjs'
import { planLarge, planSmall } from './plan-season.mjs'
import { planBoard } from './plan-board.mjs'
import { seasonReports } from './season-reports.mjs'
import { Stage } from './stage.mjs'

/** @type {Record<string, (stage: Stage) => Promise<boolean>>} */
const figures = {
  'games-list': gamesList, 'log-batches': logBatches, 'delivery-statement': deliveryStatement, fulfillment, packet, 'change-set': changeSet,
  'night-desk': nightDesk, 'desk-bundle': deskBundle, 'desk-script': deskScript, 'desk-tap': deskTap, 'desk-paint': deskPaint, 'trial-balance': trialBalance, aging,
  'billing-run': billingRun, 'invoice-pdf': invoicePdf, 'season-reports': seasonReports, 'plan-board': planBoard, 'plan-small': planSmall, 'plan-large': planLarge, 'plan-by-hand': planByHand, 'plan-company': planCompany,
  boards: boardsAgainstSql, 'boards-among': boardsAmong,
}

/** Each figure stands on a stage of its own, which is cleared whatever happens. @param {string} name */
async function measure(name) {
  const stage = new Stage()
  const leave = () => void stage.close().finally(() => process.exit(130))
  process.once('SIGINT', leave).once('SIGTERM', leave)
  try {
    await stage.open()
    return (await figures[name]?.(stage)) ?? false
  } finally {
    process.off('SIGINT', leave).off('SIGTERM', leave)
    await stage.close()
  }
}

await command(async () => {
  const asked = process.argv.slice(2)
  const unknown = asked.filter((name) => !Object.hasOwn(figures, name))
  if (unknown.length > 0) throw new WayOut(`There is no figure "${unknown.join('", "')}". There are: ${Object.keys(figures).join(', ')}.`)
  let isShort = false
  for (const name of asked.length > 0 ? asked : Object.keys(figures)) isShort = !(await measure(name)) || isShort
  return isShort ? 1 : 0
})
