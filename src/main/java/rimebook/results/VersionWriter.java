package rimebook.results;

import java.util.List;
import java.util.stream.Collectors;

import org.springframework.stereotype.Component;

import rimebook.published.Standing;
import rimebook.published.StandingText;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.wording.Sentence;

/** Writes the next version of a standing and says so. */
@Component
class VersionWriter {

	private final ResultVersionRepository versions;

	private final StandingText text;

	private final Acts acts;

	VersionWriter(ResultVersionRepository versions, StandingText text, Acts acts) {
		this.acts = acts;
		this.versions = versions;
		this.text = text;
	}

	void write(ResultVersion.Key key, ResultVersion.ResultState state, Publication publication, Standing standing) {
		String body = this.text.write(standing);
		ResultVersion version = new ResultVersion(key, state, publication.reason(), this.acts.now(),
				StandingText.fingerprint(body), standing);
		this.versions.save(new ResultVersionRow(this.acts.nextId(), version, body));
		this.acts.publish(new ResultVersion.VersionPublished(key.scope(), key.scopeId(), key.number(),
				line(version, publication.actor(), standing)));
	}

	private static AuditedChange line(ResultVersion version, Actor actor, Standing standing) {
		return AuditedChange.of(actor, "result", version.scopeId(), "result.published")
			.from(before(version, standing),
					title(standing) + ", version " + version.number() + ", " + version.state().name().toLowerCase()
							+ ", after " + standing.skated() + " of " + standing.starters() + ": "
							+ places(standing.rows()) + "; fingerprint " + version.fingerprint())
			.because(version.cause().lead() + version.note());
	}

	/**
	 * The places before stand in the line of that version, whose number leads there.
	 */
	private static String before(ResultVersion version, Standing standing) {
		return (version.number() == 1) ? "" : title(standing) + ", version " + (version.number() - 1);
	}

	private static String title(Standing standing) {
		return standing.segment().isEmpty() ? standing.event() : standing.event() + ", " + standing.segment();
	}

	private static String places(List<Standing.Row> rows) {
		return rows.stream()
			.map((row) -> ((row.place() != null) ? row.place() : "-") + " " + row.team())
			.collect(Collectors.joining(", "));
	}

	/**
	 * Why a version is written, and by whose act.
	 */
	record Publication(ResultVersion.Reason reason, Actor actor) {

		Publication(ResultVersion.Cause cause, Sentence note, Actor actor) {
			this(new ResultVersion.Reason(cause, note), actor);
		}

	}

}
