package rimebook.shared;

import java.time.ZoneId;

import org.jspecify.annotations.Nullable;

/**
 * What people call a thing that stands on the record.
 *
 * @param words its name and where it belongs: "No. 5 Icefern, Junior, Free skating"
 * @param zone the time zone of the rink where it is, {@code null} where it is at none
 */
public record SubjectName(String words, @Nullable ZoneId zone) {

	/** A thing that belongs to no rink. */
	public static SubjectName of(String words) {
		return new SubjectName(words, null);
	}

}
