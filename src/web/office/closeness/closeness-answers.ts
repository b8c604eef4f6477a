/** What the service says of how close a posted class was. The records inside are the engine's own. */
import type { AgreementRecord } from '../../../engine/agreement/agreement-record.ts';
import type { MarginChange } from '../../../engine/agreement/margins.ts';
import { fromRecordText } from '../../../engine/numbers/number-text.ts';
import type { Answer } from '../../shared/api.ts';

export type Margins = Answer<'/v1/classes/{classId}/margins'>;
export type Agreement = Answer<'/v1/classes/{classId}/agreement'>;
export type JudgeGoes = Agreement['judges'][number];
export type Result = Answer<'/v1/classes/{classId}/result'>;

/** The document of the API leaves these open; they are plain JSON of these forms. */
export const changeOf = ({ change }: Margins['margins'][number]): MarginChange => change as MarginChange;
export const recordOf = ({ agreement }: Agreement): AgreementRecord => agreement as AgreementRecord;

/** For drawing only: a plot may be a hair off, a number in words may not. */
export const drawn = (recorded: string): number => fromRecordText(recorded).valueOf();
