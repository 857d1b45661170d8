export type { DocumentKind, FoundBy, FoundDocument, FoundDocuments } from '../../server/reports/documents/document.dto.ts';
