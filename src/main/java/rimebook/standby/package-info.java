/**
 * The laptop that dies: a copy of everything at a second place, the start from it on
 * another laptop, and the cards that tablets bring back.
 *
 * <p>
 * What lies at the second place, and nothing else is needed: whole copies
 * ({@code rimebook-TIME.zip}, H2's own online backup, and beside each a note
 * {@code rimebook-TIME.txt} without which it is not taken for whole), the lines of the
 * record since the newest ({@code rimebook-TIME.since.jsonl}), and the last sign of life
 * ({@code rimebook-alive.txt}), which is also the record's head kept elsewhere. The
 * folder {@code music} holds the files that lie beside the database.
 */
@ApplicationModule(allowedDependencies = { "audit", "live", "performances", "pages", "shared", "wording" })
@NullMarked
package rimebook.standby;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
