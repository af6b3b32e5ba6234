/** Our own sign: the spread ellipse, and the feathering axis seen end on, with the chord through it. */
export function Wordmark() {
  return (
    <svg className="app-sign" viewBox="0 0 32 32" width="22" height="22" aria-hidden="true">
      <ellipse
        cx="16"
        cy="16"
        rx="13"
        ry="8"
        transform="rotate(-24 16 16)"
        fill="none"
        stroke="currentColor"
        strokeWidth="2.5"
      />
      <path d="M4.1 21.3 27.9 10.7" stroke="currentColor" strokeWidth="1.5" strokeDasharray="3 2" />
      <circle className="app-sign-axis" cx="16" cy="16" r="3" />
    </svg>
  );
}
