/** The values of one form, kept on the device with every stroke until they are written or dropped. */
import { forgetDraft, keepDraft, keptDraft } from './drafts.ts';

export interface FormDraft<Values extends object> {
  values: Values;
  /** True while the values come from a form that was left before it was written. */
  readonly isContinued: boolean;
  /** Back to what the form began with. */
  afresh(): void;
  /** The values are written: nothing needs keeping any more. */
  written(): void;
}

/** To be called while a component is being made. @param name tells this form from all others. */
export function formDraft<Values extends object>(name: string, usual: Values): FormDraft<Values> {
  const usually = JSON.stringify(usual);
  const begun = (): Values => JSON.parse(usually) as Values;
  /** What needs no keeping: the usual values, later those that were written. */
  let settled = usually;
  const kept = keptDraft<Partial<Values>>(name);
  const values: Values = $state({ ...begun(), ...kept });
  const state = $state({ isContinued: kept !== null });
  $effect(() => {
    const now = JSON.stringify(values);
    if (now === settled) forgetDraft(name);
    else keepDraft(name, JSON.parse(now));
  });
  return {
    values,
    get isContinued() {
      return state.isContinued;
    },
    afresh: () => {
      Object.assign(values, begun());
      state.isContinued = false;
    },
    written: () => {
      settled = JSON.stringify(values);
      state.isContinued = false;
      // The form may be gone before its effect could run.
      forgetDraft(name);
    },
  };
}
