/** Why what was typed or chosen is refused; nothing where it holds. */
export function FieldFault(props: { readonly id: string; readonly text: string | null }) {
  if (props.text === null) return null;
  return (
    <p className="field-fault" role="alert" id={props.id}>
      {props.text}
    </p>
  );
}
