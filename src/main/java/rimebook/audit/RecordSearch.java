package rimebook.audit;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

import org.jspecify.annotations.Nullable;

/**
 * Which lines are looked for; what is empty fits every line.
 *
 * @param about what changed
 * @param by who changed it
 * @param span when
 * @param text words to find in who, what, before, after or why
 */
record RecordSearch(About about, By by, Span span, String text) {

	private static final String WORDS = """
			(lower(actor) like :text escape '!' or lower(actor_id) like :text escape '!'
			or lower(subject_id) like :text escape '!'
			or lower(action) like :text escape '!' or lower(before_text) like :text escape '!'
			or lower(after_text) like :text escape '!' or lower(reason) like :text escape '!')""";

	RecordSearch {
		text = text.strip();
	}

	/** Every line that has these words and is about that kind of thing. */
	static RecordSearch of(String subject, String text) {
		return new RecordSearch(new About(subject, ""), new By("", ""), new Span(null, null), text);
	}

	/** The lines that tell of published versions. */
	static RecordSearch ofVersions() {
		return of("result", "result.published");
	}

	/** Tell whether every line fits. */
	public boolean isForAll() {
		return conditions().isEmpty();
	}

	/**
	 * What a line has to be, in SQL. Only what is asked for stands in it, so that an
	 * index can be used.
	 */
	String where() {
		return isForAll() ? "" : " where " + String.join(" and ", conditions().keySet());
	}

	/** The values that the conditions name. */
	Map<String, Object> values() {
		Map<String, Object> values = new HashMap<>();
		conditions().values().forEach(values::putAll);
		return values;
	}

	private Map<String, Map<String, Object>> conditions() {
		Map<String, Map<String, Object>> conditions = new LinkedHashMap<>();
		add(conditions, "subject = :subject", "subject", this.about.subject());
		add(conditions, "subject_id = :id", "id", this.about.id());
		if (this.by.isIdentity()) {
			add(conditions, "actor_id = :person", "person", this.by.person());
		}
		else {
			add(conditions, "lower(actor) like :person escape '!'", "person", pattern(this.by.person()));
		}
		add(conditions, "lower(device) like :device escape '!'", "device", pattern(this.by.device()));
		add(conditions, "written_at >= :from", "from", utc(this.span.from()));
		add(conditions, "written_at < :until", "until", utc(this.span.until()));
		add(conditions, WORDS, "text", pattern(this.text));
		return conditions;
	}

	private static void add(Map<String, Map<String, Object>> conditions, String sql, String name,
			@Nullable Object value) {
		if (value != null && !value.equals("")) {
			conditions.put(sql, Map.of(name, value));
		}
	}

	private static String pattern(String text) {
		return text.isEmpty() ? "" : "%" + text.toLowerCase(Locale.ROOT).replaceAll("([!%_])", "!$1") + "%";
	}

	private static @Nullable OffsetDateTime utc(@Nullable Instant time) {
		return (time != null) ? OffsetDateTime.ofInstant(time, ZoneOffset.UTC) : null;
	}

	/**
	 * What changed.
	 *
	 * @param subject the kind of thing
	 * @param id which one
	 */
	record About(String subject, String id) {

		About {
			subject = subject.strip();
			id = id.strip();
		}

	}

	/**
	 * Who changed it.
	 *
	 * @param person part of a name, or a whole identity
	 * @param device part of an address or of what a device is called
	 */
	record By(String person, String device) {

		By {
			person = person.strip();
			device = device.strip();
		}

		/** Tell whether the person is named by identity: a name has no colon in it. */
		boolean isIdentity() {
			return this.person.matches("(person|seat|name):.+");
		}

	}

	/**
	 * When.
	 *
	 * @param from no earlier, {@code null} for from the beginning
	 * @param until earlier than that, {@code null} for to the end
	 */
	record Span(@Nullable Instant from, @Nullable Instant until) {
	}

}
