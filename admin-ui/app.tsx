import { Admin, CustomRoutes, Resource } from 'react-admin';
import { Route } from 'react-router';
import { accounts } from './accounts/resource.ts';
import { audit } from './audit/resource.ts';
import { authProvider } from './auth-provider.ts';
import { CalendarFeedsPage } from './calendar-feeds/page.tsx';
import { CallsPage } from './calls/page.tsx';
import { CheckEntryPage } from './check-entry/page.tsx';
import { CHANGE_KINDS } from './contracts/changes/change-kinds.tsx';
import { ChangePage } from './contracts/changes/change-page.tsx';
import { AtRiskPage } from './boards/at-risk.tsx';
import { GlancePage } from './boards/glance.tsx';
import { billingRuns } from './billing-runs/resource.ts';
import { AccountLedgerPage } from './books/account-ledger.tsx';
import { AgingPage } from './books/aging.tsx';
import { IncomeByTeamPage } from './books/income-by-team.tsx';
import { TrialBalancePage } from './books/trial-balance.tsx';
import { UnearnedRevenuePage } from './books/unearned-revenue.tsx';
import { contracts } from './contracts/resource.ts';
import { copies } from './copies/resource.ts';
import { creditMemos } from './credit-memos/resource.ts';
import { dataProvider } from './data-provider.ts';
import { depositSlips } from './deposit-slips/resource.ts';
import { DepartmentPage } from './department/page.tsx';
import { FindPage } from './find/page.tsx';
import { games } from './games/resource.ts';
import { HomePage } from './home/home.tsx';
import { ImportsPage } from './imports/page.tsx';
import { IncomeBoardPage } from './income-board/page.tsx';
import { invoices } from './invoices/resource.ts';
import { ErrorPage } from './layout/error-page.tsx';
import { makegoodProposals } from './makegood-proposals/resource.ts';
import { journalBatches, journalLayouts } from './journal/resource.ts';
import { Layout } from './layout/layout.tsx';
import { NoAccess } from './layout/no-access.tsx';
import { NotFound } from './layout/not-found.tsx';
import { months } from './months/resource.ts';
import { letters } from './letters/resource.ts';
import { nights } from './nights/resource.ts';
import { OpenMoneyPage } from './open-money/page.tsx';
import { offers } from './offers/resource.ts';
import { packages } from './packages/resource.ts';
import { PlanBoardPage } from './plan-board/page.tsx';
import { payers } from './payers/resource.ts';
import { performanceStatements } from './performance-statements/resource.ts';
import { payments } from './payments/resource.ts';
import { people } from './people/resource.ts';
import { CanWePromisePage } from './promise/can-we-promise.tsx';
import { LeftToSellPage } from './promise/left-to-sell.tsx';
import { planProposals } from './plan-proposals/resource.ts';
import { readDisputes } from './read-disputes/resource.ts';
import { RenewalsPage } from './renewals/page.tsx';
import { rateCard } from './rate-card/resource.ts';
import { readKinds } from './read-kinds/resource.ts';
import { receipts } from './receipts/resource.ts';
import { schools } from './schools/resource.ts';
import { scripts } from './scripts/resource.ts';
import { seals } from './seals/resource.ts';
import { seasons } from './seasons/resource.ts';
import { sellers } from './sellers/resource.ts';
import { MyPage } from './session/my-page.tsx';
import { SignIn } from './session/sign-in.tsx';
import { sponsorCategories } from './sponsor-categories/resource.ts';
import { sponsors } from './sponsors/resource.ts';
import { statementRuns } from './statement-runs/resource.ts';
import { teams } from './teams/resource.ts';
import { darkTheme, lightTheme } from './theme/theme.ts';
import { venues } from './venues/resource.ts';
import { RollOverPage } from './seasons/roll-over/roll-over-page.tsx';
import { WindowPlacesPage } from './window-places/page.tsx';
import { i18nProvider } from './words/english.ts';

const RESOURCES = [
  nights, games, teams, schools, venues, seasons, offers, contracts, sponsors, copies, readKinds, rateCard, packages, sponsorCategories, scripts, planProposals, makegoodProposals, readDisputes,
  billingRuns, invoices, creditMemos, payments, receipts, depositSlips, payers, sellers, letters, months, journalBatches, journalLayouts, accounts, people, audit, seals,
  performanceStatements, statementRuns,
];

export const App = () => (
  <Admin
    title="Rafterline"
    dataProvider={dataProvider}
    authProvider={authProvider}
    i18nProvider={i18nProvider}
    theme={lightTheme}
    darkTheme={darkTheme}
    defaultTheme="light"
    layout={Layout}
    loginPage={SignIn}
    dashboard={HomePage}
    catchAll={NotFound}
    error={ErrorPage}
    accessDenied={NoAccess}
    requireAuth
    disableTelemetry
  >
    {RESOURCES.map((resource) => <Resource key={resource.name} {...resource} />)}
    <CustomRoutes>
      {CHANGE_KINDS.map((kind) => <Route key={kind.key} path={`/contracts/:id/${kind.key}`} element={<ChangePage key={kind.key} kind={kind} />} />)}
      <Route path="/calendar-feeds" element={<CalendarFeedsPage />} />
      <Route path="/seasons/:id/roll-over" element={<RollOverPage />} />
      <Route path="/calls" element={<CallsPage />} />
      <Route path="/plan" element={<PlanBoardPage />} />
      <Route path="/at-risk" element={<AtRiskPage />} />
      <Route path="/glance" element={<GlancePage />} />
      <Route path="/trial-balance" element={<TrialBalancePage />} />
      <Route path="/account-ledger" element={<AccountLedgerPage />} />
      <Route path="/aging" element={<AgingPage />} />
      <Route path="/unearned-revenue" element={<UnearnedRevenuePage />} />
      <Route path="/income-by-team" element={<IncomeByTeamPage />} />
      <Route path="/income-board" element={<IncomeBoardPage />} />
      <Route path="/renewals" element={<RenewalsPage />} />
      <Route path="/can-we-promise" element={<CanWePromisePage />} />
      <Route path="/left-to-sell" element={<LeftToSellPage />} />
      <Route path="/window-places" element={<WindowPlacesPage />} />
      <Route path="/imports" element={<ImportsPage />} />
      <Route path="/open-money" element={<OpenMoneyPage />} />
      <Route path="/check-entry" element={<CheckEntryPage />} />
      <Route path="/find" element={<FindPage />} />
      <Route path="/department" element={<DepartmentPage />} />
      <Route path="/me" element={<MyPage />} />
    </CustomRoutes>
  </Admin>
);
