import type { RevealForm } from '../kinds'

/** The form of a reveal where the frame stands: the splay of a flank begins behind it. */
export const formAtFrame = (form: RevealForm): RevealForm => (form === 'splayed' ? 'butt' : form)
