package rimebook.audit;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.StringJoiner;

import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriUtils;

import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

import static java.nio.charset.StandardCharsets.UTF_8;

/**
 * What somebody typed to find lines, as it stands in the address. Times are those of the
 * rink, to the minute, and both minutes are meant as well.
 */
record SearchForm(@Nullable String subject, @Nullable String id, @Nullable String person, @Nullable String device,
		@Nullable String from, @Nullable String to, @Nullable String text) {

	SearchForm {
		subject = Objects.requireNonNullElse(subject, "").strip();
		id = Objects.requireNonNullElse(id, "").strip();
		person = Objects.requireNonNullElse(person, "").strip();
		device = Objects.requireNonNullElse(device, "").strip();
		from = Objects.requireNonNullElse(from, "").strip();
		to = Objects.requireNonNullElse(to, "").strip();
		text = Objects.requireNonNullElse(text, "").strip();
	}

	/** What is looked for. */
	RecordSearch in(ZoneId zone) {
		LocalDateTime from = time("from", this.from);
		LocalDateTime to = time("to", this.to);
		return new RecordSearch(new RecordSearch.About(said(this.subject), said(this.id)),
				new RecordSearch.By(said(this.person), said(this.device)),
				new RecordSearch.Span((from != null) ? from.atZone(zone).toInstant() : null,
						(to != null) ? to.plusMinutes(1).atZone(zone).toInstant() : null),
				said(this.text));
	}

	/** Tell whether more is asked for than most look for. */
	public boolean isFiner() {
		return !(this.person + this.device + this.from + this.to).isEmpty();
	}

	private static String said(@Nullable String text) {
		return Objects.requireNonNullElse(text, "");
	}

	private static @Nullable LocalDateTime time(String field, @Nullable String typed) {
		try {
			return said(typed).isEmpty() ? null : LocalDateTime.parse(said(typed));
		}
		catch (DateTimeParseException ex) {
			throw RuleViolationException.ofField("field-malformed", field, Sentence.of("audit.not-a-time"));
		}
	}

	/** The same as the query of an address, empty or ending so that more may follow. */
	String query() {
		StringJoiner query = new StringJoiner("&", "", "&").setEmptyValue("");
		fields().forEach((name, typed) -> {
			if (!typed.isEmpty()) {
				query.add(name + "=" + UriUtils.encode(typed, UTF_8));
			}
		});
		return query.toString();
	}

	private Map<String, String> fields() {
		Map<String, String> fields = new LinkedHashMap<>();
		fields.put("subject", said(this.subject));
		fields.put("id", said(this.id));
		fields.put("person", said(this.person));
		fields.put("device", said(this.device));
		fields.put("from", said(this.from));
		fields.put("to", said(this.to));
		fields.put("text", said(this.text));
		return fields;
	}

}
