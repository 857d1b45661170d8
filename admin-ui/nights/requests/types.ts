export type { NightRequestView as NightRequest, OpenedRequestFormView as OpenedRequestForm, RequestFormView as RequestForm } from '../../../server/night/requests/request.dto.ts';
