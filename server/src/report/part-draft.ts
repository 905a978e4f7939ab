/** A part drafted from a seller's text: the fields that were recognised, the id it gets, and what checks still ask for. Lays out nothing. */
import { allChecks } from '../checks/generated/all';
import { idFrom } from '../library/seller-text/entry';
import { type Missing, missingFields } from '../library/seller-text/missing';
import { fieldsOfKind, type Proposed, proposeFields } from '../library/seller-text/propose';
import { withTypical } from '../library/seller-text/typical';
import { restsOn } from '../plan/worked';
import { draftNotes } from './draft-notes';

export interface PartDraft {
  readonly id: string;
  readonly proposed: Proposed;
  /** What most checks wait for comes first. */
  readonly missing: readonly Missing[];
  /** What stands below the entry, the same in the editor and on the command line. */
  readonly notes: readonly string[];
}

export interface DraftWishes {
  /** YYYY-MM-DD */
  readonly today: string;
  /** Usual values where the text says nothing. */
  readonly typical: boolean;
  /** Whether another part has an id already. */
  readonly taken: (id: string) => boolean;
}

export function partDraft(kind: string, text: string, { today, typical, taken }: DraftWishes): PartDraft {
  const read = proposeFields(kind, text, today);
  const proposed = typical ? withTypical(read, Object.keys(fieldsOfKind(kind)?.fields ?? {})) : read;
  const missing = missingFields(proposed, allChecks, restsOn);
  return {
    id: idFrom(proposed.name, kind, taken),
    proposed,
    missing,
    notes: draftNotes(missing, proposed.unread),
  };
}
