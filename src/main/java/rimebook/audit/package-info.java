/**
 * The record: hears every audited event, writes a line in the transaction of the change,
 * chains each line to the one before it, and tells whether the chain is whole. Nobody
 * calls it to write, and it knows no other module.
 *
 * <p>
 * Anyone can recompute the chain. A line's digest is the SHA-256, in small hexadecimal
 * digits, of its fields one after the other. Form 2: the form ({@code 2}), number, time
 * (UTC, ISO 8601 with three digits of seconds, {@code 2026-11-25T14:02:11.000Z}), actor's
 * name, actor's identity, role, device, subject, identity of the subject, action, before,
 * after, reason, evidence, digest of the line before (64 zeros for line 1). Form 1, in
 * which lines were written before there were identities: the same without the form, the
 * actor's identity and the evidence. Each field is written as its length in UTF-8 bytes
 * in decimal digits, a colon, the bytes, a comma ("netstring"), so that no text can pass
 * for another split into fields.
 */
@ApplicationModule(allowedDependencies = { "shared", "pages", "wording" })
@NullMarked
package rimebook.audit;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
