import { Alert } from '@mui/material';
import { CopiesOfSponsor } from '../copies/copies-of-sponsor.tsx';
import { dayText } from '../format/day.ts';
import { SendButton } from '../letters/send-button.tsx';
import { StatementsOfContract } from '../performance-statements/of-contract.tsx';
import { PromiseAnswer } from '../promise/promise-answer.tsx';
import { iMay } from '../session/rights.ts';
import { PageTabs } from '../show/page-tabs.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { CreditsSheet } from './credits/credits-sheet.tsx';
import { ChangeMenu } from './changes/change-menu.tsx';
import { DeleteDraftButton } from './delete-draft-button.tsx';
import { ExplanationSheet } from './explain/explanation-sheet.tsx';
import { FulfillmentSheet } from './fulfillment/fulfillment-sheet.tsx';
import { GoodsSheet } from './goods/goods-sheet.tsx';
import { InvoicesOfContract } from './invoices-of-contract.tsx';
import { IssueInvoiceButton } from './issue-invoice-button.tsx';
import { OpeningButton } from './opening-button.tsx';
import { PromiseSheet } from './promise-sheet.tsx';
import { SignButton } from './sign-button.tsx';
import { StandingFigures } from './standing-figures.tsx';
import { AccountSheet } from './statements/account-sheet.tsx';
import { DeliverySheet } from './statements/delivery-sheet.tsx';
import type { Contract } from './types.ts';

function Actions({ contract }: { contract: Contract }) {
  const draft = contract.term.state === 'draft';
  const may = iMay('contracts', 'edit');
  return (
    <>
      {may && draft && <SignButton contract={contract} />}
      {may && draft && <OpeningButton contract={contract} />}
      {!draft && iMay('contract-changes', 'edit') && <ChangeMenu contract={contract} />}
      {iMay('invoices', 'create') && !contract.isInKind && (contract.term.state === 'signed' || contract.term.state === 'ended') && <IssueInvoiceButton contract={contract} />}
      {!draft && <SendButton label="Thank-you letter…" which={{ kind: 'thankYou', aboutId: contract.id }} />}
      {may && draft && <DeleteDraftButton contract={contract} />}
    </>
  );
}

function sheetsOf(contract: Contract) {
  const promise = { key: 'promise', label: 'What was promised', content: () => <PromiseSheet contract={contract} /> };
  const copy = { key: 'copy', label: 'Copy', content: () => <CopiesOfSponsor sponsorId={contract.sponsorId} /> };
  const goods = contract.isInKind ? [{ key: 'goods', label: 'Goods', content: () => <GoodsSheet contractId={contract.id} /> }] : [];
  const places = { key: 'places', label: 'Can we promise this?', content: () => <PromiseAnswer path={`/contracts/${contract.id}/promise-checks`} version={contract.version} /> };
  if (contract.term.state === 'draft') return [promise, ...(contract.commitments.length > 0 ? [places] : []), ...goods, copy];
  return [
    promise,
    { key: 'fulfillment', label: 'Fulfillment', content: () => <FulfillmentSheet contract={contract} /> },
    ...goods,
    { key: 'delivery', label: 'Delivery statement', content: () => <DeliverySheet contract={contract} /> },
    { key: 'credits', label: 'Missed reads and credits', content: () => <CreditsSheet contract={contract} /> },
    { key: 'account', label: 'Account statement', content: () => <AccountSheet contract={contract} /> },
    ...(iMay('performance-statements', 'list') ? [{ key: 'performance', label: 'Statements of performance', content: () => <StatementsOfContract contractId={contract.id} /> }] : []),
    ...(iMay('invoices', 'list') ? [{ key: 'explanation', label: 'Explain the figures', content: () => <ExplanationSheet contract={contract} /> }] : []),
    { key: 'invoices', label: 'Invoices', content: () => <InvoicesOfContract contract={contract} /> },
    copy,
  ];
}

export const ContractShow = () => (
  <ShowPage<Contract> title={(contract) => contract.title} canEdit={(contract) => contract.term.state === 'draft'} actions={(contract) => <Actions contract={contract} />}>
    {(contract) => (
      <>
        {contract.hold && <Alert severity="warning" icon={false} sx={{ mb: 2 }}>Held since {dayText(contract.hold.heldOn)}. Its reads stay owed; none is planned or printed. Why: {contract.hold.reason}</Alert>}
        {contract.term.state !== 'draft' && contract.standing && <StandingFigures contract={contract} />}
        <PageTabs label="Parts of the contract" sheets={sheetsOf(contract)} />
      </>
    )}
  </ShowPage>
);
