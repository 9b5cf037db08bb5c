package rimebook.shared;

import java.time.ZoneId;
import java.util.Optional;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * Lets modules say what the identities of their things mean, so that people who read the
 * record read names. Asked for many lines at a time, outside any transaction.
 */
public interface SubjectNames {

	/**
	 * The name of a thing as it is called now.
	 * @param subject the kind of thing, as {@link AuditedChange#subject()} has it
	 * @return empty for a kind of another module, or where the thing is gone
	 * @throws NotFoundException if it is gone too
	 */
	Optional<Named> nameOf(String subject, UUID id);

	/** The zone of what is going on, if there is one only; empty if that is not known. */
	default Optional<ZoneId> zone() {
		return Optional.empty();
	}

	/**
	 * What people call a thing that stands on the record.
	 *
	 * @param words its name and where it belongs: "No. 5 Icefern, Junior, Free skating"
	 * @param zone the time zone of the rink where it is, {@code null} where it is at none
	 */
	record Named(String words, @Nullable ZoneId zone) {

		/** A thing that belongs to no rink. */
		public static Named of(String words) {
			return new Named(words, null);
		}

	}

}
