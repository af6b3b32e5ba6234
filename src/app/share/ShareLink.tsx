import { useMemo, useRef, useState } from 'react';
import { t } from '../../messages';
import { LONGEST_LINK, shareLink } from '../../output/share/shareLink';
import { useRestingDesign, useSession } from '../../ui/session';
import { useServices } from '../AppContext';
import './share.css';

/** The link to the design as it is now, to be copied; where it would be too long, the file in its place. */
export function ShareLink() {
  const { live } = useSession();
  const design = useRestingDesign();
  const link = useMemo(() => {
    live.flush();
    return shareLink(design, pageAddress());
  }, [design, live]);
  return link.ok ? <Link link={link.value} /> : <TooLong length={link.error.length} />;
}

/** The address of the page without what stands behind it. */
function pageAddress(): string {
  const { origin, pathname } = window.location;
  return `${origin}${pathname}`;
}

function Link({ link }: { readonly link: string }) {
  const field = useRef<HTMLTextAreaElement>(null);
  const [said, setSaid] = useState('');

  async function copy(): Promise<void> {
    field.current?.select();
    try {
      await navigator.clipboard.writeText(link);
      setSaid(t('share.copied'));
    } catch {
      setSaid(t('share.notCopied'));
    }
  }

  return (
    <div className="share">
      <p>{t('share.note')}</p>
      <textarea
        ref={field}
        className="share-link"
        readOnly
        rows={5}
        spellCheck={false}
        aria-label={t('share.link')}
        data-testid="share-link"
        value={link}
        onFocus={(event) => event.currentTarget.select()}
      />
      <div className="share-row">
        <button
          type="button"
          className="ui-button"
          data-testid="share-copy"
          onClick={() => void copy()}
        >
          {t('share.copy')}
        </button>
        <span className="share-length">
          {t('share.length', { length: link.length, limit: LONGEST_LINK })}
        </span>
      </div>
      <p role="status">{said}</p>
    </div>
  );
}

function TooLong({ length }: { readonly length: number }) {
  const { desk } = useServices();
  return (
    <div className="share">
      <p>{t('share.tooLong', { length, limit: LONGEST_LINK })}</p>
      <div className="share-row">
        <button
          type="button"
          className="ui-button"
          data-testid="share-file"
          onClick={() => void desk.save()}
        >
          {t('share.saveFile')}
        </button>
      </div>
    </div>
  );
}
