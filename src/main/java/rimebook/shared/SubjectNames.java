package rimebook.shared;

import java.time.ZoneId;
import java.util.Optional;
import java.util.UUID;

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
	Optional<SubjectName> nameOf(String subject, UUID id);

	/** The zone of what is going on, if there is one only; empty if that is not known. */
	default Optional<ZoneId> zone() {
		return Optional.empty();
	}

}
