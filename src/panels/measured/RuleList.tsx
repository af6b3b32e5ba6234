import { type MessageKey, t } from '../../messages';

/** Instructions in their order. */
export function RuleList(props: { readonly rules: readonly MessageKey[] }) {
  return (
    <ol className="swing-rules">
      {props.rules.map((rule) => (
        <li key={rule}>{t(rule)}</li>
      ))}
    </ol>
  );
}
