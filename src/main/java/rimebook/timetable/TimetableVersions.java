package rimebook.timetable;

import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;
import rimebook.shared.ConflictException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.timetable.plan.Differences;
import rimebook.timetable.plan.Programmed;
import rimebook.wording.Sentence;

/**
 * Publishes timetables and keeps every one. What was published is never changed; it is
 * mended by publishing again, and everybody sees what became different.
 */
@Service
@Transactional(readOnly = true)
public class TimetableVersions {

	private final TimetableVersionRepository rows;

	private final Timetables timetables;

	private final PlanText text;

	private final Acts acts;

	TimetableVersions(TimetableVersionRepository rows, Timetables timetables, PlanText text, Acts acts) {
		this.rows = rows;
		this.timetables = timetables;
		this.text = text;
		this.acts = acts;
	}

	/**
	 * Publish the plan as it stands, with the teams there are now.
	 * @param seen the number of the plan that the person was looking at
	 * @param note why it differs from the one before, up to 500 characters, for everybody
	 * to read; may stay empty
	 * @throws RuleViolationException {@code timetable-empty} if there is nothing in it
	 * @throws ConflictException {@code timetable-published} if everybody reads the same
	 * already
	 */
	@Transactional
	public TimetableVersion publish(CompetitionId id, int seen, String note, Actor actor) {
		String why = Required.optional("note", note, 500);
		PlanView plan = this.timetables.hold(id, seen);
		if (plan.plan().isEmpty()) {
			throw new RuleViolationException("timetable-empty", Sentence.of("timetable.empty"));
		}
		Programmed now = Programmed.of(plan.plan(), plan.laid(), plan.programme());
		Optional<TimetableVersion> before = latest(id);
		if (before.isPresent() && before.get().timetable().equals(now)) {
			throw new ConflictException("timetable-published",
					Sentence.of("timetable.published-already", before.get().number()));
		}
		int number = before.map(TimetableVersion::number).orElse(0) + 1;
		TimetableVersionRow row = this.rows.saveAndFlush(new TimetableVersionRow(this.acts.nextId(), id,
				new TimetableVersionRow.Made(number, plan.number(), why, this.text.write(now)), actor,
				this.acts.now()));
		AuditedChange line = AuditedChange.of(actor, "timetable", id, "timetable.published")
			.from(before.map((version) -> "version " + version.number()).orElse(""),
					"version " + number + ", "
							+ before
								.map((version) -> Differences.between(version.timetable(), now).size() + " differences")
								.orElse(PlanWords.summary(plan.plan())));
		this.acts.publish(new Published(id, number, line.because(why)));
		return view(row);
	}

	/** The timetable in force, if one was published. */
	public Optional<TimetableVersion> latest(CompetitionId id) {
		return this.rows.findFirstByCompetitionOrderByNumberDesc(id.value()).map(this::view);
	}

	/** The timetable of that number, if there is one. */
	public Optional<TimetableVersion> version(CompetitionId id, int number) {
		return this.rows.findByCompetitionAndNumber(id.value(), number).map(this::view);
	}

	/** How many were published. */
	public int published(CompetitionId id) {
		return this.rows.countByCompetition(id.value());
	}

	/** How a published timetable differs from the one before; empty for the first. */
	public List<Differences.Difference> differences(TimetableVersion version) {
		return version(version.competition(), version.number() - 1)
			.map((before) -> Differences.between(before.timetable(), version.timetable()))
			.orElseGet(List::of);
	}

	/**
	 * How the plan, with the teams there are now, differs from what everybody reads;
	 * empty where nothing was published.
	 */
	public List<Differences.Difference> unpublished(PlanView plan) {
		return latest(plan.competition())
			.map((version) -> Differences.between(version.timetable(),
					Programmed.of(plan.plan(), plan.laid(), plan.programme())))
			.orElseGet(List::of);
	}

	private TimetableVersion view(TimetableVersionRow row) {
		return row.with(this.text.programmed(row.body()));
	}

	/**
	 * A timetable was published.
	 *
	 * @param number the version in force now
	 */
	public record Published(CompetitionId competition, int number, AuditedChange change) implements AuditedEvent {
	}

}
