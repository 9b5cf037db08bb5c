/**
 * A competition as one file that anybody can read and check for years, and that becomes
 * the same competition again in an empty database.
 *
 * <p>
 * <b>What is in it.</b> Each module declares its tables in
 * {@code archive/tables/MODULE.tables}: how their rows belong to a competition, which
 * columns hold personal data, which never leave, and which tables stay behind and why.
 * Nothing else is known of a table, so a new column cannot be forgotten: a test compares
 * the declarations with the database. From these come {@code data/TABLE.json} and
 * {@code .csv} with their {@code schema.json}; the bodies of published versions are files
 * of their own, byte for byte as they were fingerprinted. Rows keep their identities and
 * versions, so the restored competition archives to the same bytes.
 *
 * <p>
 * <b>The record.</b> A database has one chain for all its competitions. Every line comes
 * along, in its place; of a line about a thing that is not in the archive (another
 * competition's) only its link: number, digest and the digest before it. The next line's
 * digest covers that one's, so the chain can be followed from the first line to the head
 * and no line can be left out or put in between. In the restored database such a line is
 * of form 0, and {@code verify-record} says how many there are. What a database of one
 * competition archives has every line whole.
 *
 * <p>
 * <b>People.</b> Names stand on lines and beside signatures, so accounts come along, but
 * never a password's digest or a seat's code: restored accounts are closed until an
 * administrator opens them with a new password, and the service prints its set-up link
 * since there is none. The public variant has what was published: no account, no
 * official, no name but those of teams and clubs, none of the texts that people wrote, no
 * card as it was before it was closed, and of every line only its link; it can be checked
 * but not restored.
 *
 * <p>
 * <b>Whole or not at all.</b> The last 64 bytes of the file are the SHA-256 of all bytes
 * before them; each file inside is in {@code manifest.txt}. A file is written under
 * another name, forced to the disk and renamed. Restoring is one transaction.
 */
@ApplicationModule(allowedDependencies = { "audit", "results", "published", "competition", "tabulation",
		"tabulation :: points", "shared", "wording" })
@NullMarked
package rimebook.archive;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
