package rimebook.rulings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.competition.StillOpen;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** Takes questions to the referee and the rulings on them. */
@Service
public class Rulings {

	private final QuestionRepository questions;

	private final RulingRepository rulings;

	private final Entries entries;

	private final Competitions competitions;

	private final StillOpen stillOpen;

	private final QuestionReleases releases;

	private final Acts acts;

	Rulings(QuestionRepository questions, RulingRepository rulings, Entries entries, Competitions competitions,
			Acts acts, StillOpen stillOpen, QuestionReleases releases) {
		this.releases = releases;
		this.acts = acts;
		this.stillOpen = stillOpen;
		this.questions = questions;
		this.rulings = rulings;
		this.entries = entries;
		this.competitions = competitions;
	}

	/**
	 * Ask the referee.
	 * @throws RuleViolationException naming the field: text or name missing,
	 * {@code segment-not-of-event}, or {@code team-withdrawn}
	 * @throws NotFoundException if there is no such entry
	 */
	@Transactional
	public QuestionView ask(AskQuestion asked, Actor actor) {
		EntryView entry = this.entries.entry(asked.entry());
		// Whoever removes the segment meanwhile waits, or is seen here.
		this.competitions.holding(entry.event());
		EventView event = this.competitions.event(entry.event());
		this.stillOpen.require(event.id());
		checkFits(asked, entry, event);
		Question question = new Question(this.acts.nextId(), event.competition(), asked, actor, this.acts.now());
		this.questions.save(question);
		this.acts.publish(AuditedChange.of(actor, "ruling", question.id(), "ruling.asked")
			.to(entry.team().name() + ", " + question.topic().words() + ": " + question.text() + " (asked by "
					+ question.askedBy() + ")"));
		return view(question, List.of());
	}

	private static void checkFits(AskQuestion asked, EntryView entry, EventView event) {
		if (!entry.isEntered()) {
			throw new RuleViolationException("team-withdrawn", "entry",
					Sentence.of("rulings.team-withdrawn", entry.team().name()));
		}
		if (asked.segment() != null
				&& event.segments().stream().noneMatch((segment) -> segment.id().equals(asked.segment()))) {
			throw RuleViolationException.ofField("segment-not-of-event", "segment",
					Sentence.of("rulings.segment-not-of-event", event.name(), entry.team().name()));
		}
	}

	/**
	 * Rule on a question, or supersede the ruling on it. Those before stay for ever.
	 * @throws RuleViolationException naming the field: grounds, the condition or, to
	 * supersede, the reason missing
	 * @throws ConflictException if somebody ruled since the referee looked
	 * @throws NotFoundException if there is no such question
	 */
	@Transactional
	public QuestionView rule(GiveRuling given, Actor actor) {
		Question question = this.questions.findLockedById(given.question().value())
			.orElseThrow(() -> NotFoundException.of("question", given.question()));
		this.stillOpen.require(this.entries.entry(question.entry()).event());
		List<Ruling> before = this.rulings.findByQuestionInOrderByNumberDesc(List.of(question.getId()));
		ConflictException.requireSeen("ruling", given.seen(), before.size());
		Ruling ruling = new Ruling(this.acts.nextId(), given, actor, this.acts.now());
		this.rulings.save(ruling);
		this.acts.publish(AuditedChange
			.of(actor, "ruling", question.id(), before.isEmpty() ? "ruling.given" : "ruling.superseded")
			.from(before.isEmpty() ? "" : before.get(0).inWords(), ruling.inWords())
			.because(ruling.view().reason()));
		return question(given.question());
	}

	/**
	 * Return one question.
	 * @throws NotFoundException if there is none of that identity
	 */
	@Transactional(readOnly = true)
	public QuestionView question(QuestionView.QuestionId id) {
		return views(
				List.of(this.questions.findById(id.value()).orElseThrow(() -> NotFoundException.of("question", id))))
			.get(0);
	}

	/** List the questions of a competition, the newest first. */
	@Transactional(readOnly = true)
	public List<QuestionView> ofCompetition(CompetitionId competition) {
		return views(this.questions.findByCompetitionOrderByAskedAtDesc(competition.value()));
	}

	/** How many rulings were given at a competition; it only grows. */
	@Transactional(readOnly = true)
	public int given(CompetitionId competition) {
		return this.rulings.countOf(competition.value());
	}

	/**
	 * List the questions of a team that the referee has ruled on and lets everybody see,
	 * oldest first.
	 */
	@Transactional(readOnly = true)
	public List<QuestionView> shownOf(EntryId entry) {
		return ofEntry(entry).stream().filter(QuestionView::isShown).toList();
	}

	/**
	 * List the questions of a team that the referee has ruled on, oldest first; their
	 * current ruling is the one that counts.
	 */
	@Transactional(readOnly = true)
	public List<QuestionView> ofEntry(EntryId entry) {
		return allOf(entry).stream().filter((question) -> !question.isOpen()).toList();
	}

	/** Those of {@link #ofEntry} that count in a segment. */
	@Transactional(readOnly = true)
	public List<QuestionView> ofEntry(EntryId entry, SegmentId segment) {
		return ofEntry(entry).stream().filter((question) -> question.isAbout(segment)).toList();
	}

	/** List the questions of a team about a segment that still wait for the referee. */
	@Transactional(readOnly = true)
	public List<QuestionView> openOf(EntryId entry, SegmentId segment) {
		return allOf(entry).stream().filter((question) -> question.isOpen() && question.isAbout(segment)).toList();
	}

	/**
	 * List what the referee released about a team in a segment, oldest first: questions
	 * whose current ruling may be told to anybody, and open ones that may be spoken of.
	 */
	@Transactional(readOnly = true)
	public List<QuestionView> releasedOf(EntryId entry, SegmentId segment) {
		return allOf(entry).stream().filter((question) -> question.isAbout(segment)).filter(this::isReleased).toList();
	}

	private boolean isReleased(QuestionView question) {
		RulingView ruling = question.current();
		return (ruling != null) ? ruling.answer().shown() : this.releases.isReleased(question.id());
	}

	/** List every question of a team, ruled on or not, oldest first. */
	@Transactional(readOnly = true)
	public List<QuestionView> askedFor(EntryId entry) {
		return allOf(entry);
	}

	private List<QuestionView> allOf(EntryId entry) {
		return views(this.questions.findByEntryOrderByAskedAt(entry.value()));
	}

	private List<QuestionView> views(List<Question> questions) {
		Map<UUID, List<Ruling>> given = this.rulings
			.findByQuestionInOrderByNumberDesc(questions.stream().map(Question::getId).toList())
			.stream()
			.collect(Collectors.groupingBy(Ruling::question));
		return questions.stream()
			.map((question) -> view(question, given.getOrDefault(question.getId(), List.of())))
			.toList();
	}

	/**
	 * A question about a segment that the event no longer has is about all; none has come
	 * to be so since {@link RulingsHangOnIt} keeps the segment.
	 */
	private QuestionView view(Question question, List<Ruling> given) {
		EntryView entry = this.entries.entry(question.entry());
		EventView event = this.competitions.event(entry.event());
		Optional<SegmentView> segment = event.segments()
			.stream()
			.filter((one) -> one.id().equals(question.segment()))
			.findFirst();
		return new QuestionView(question.id(),
				new QuestionView.Scope(question.competition(), event.name(), segment.map(SegmentView::id).orElse(null),
						segment.map(SegmentView::name).orElse("")),
				new QuestionView.Party(question.entry(), entry.team().name(), entry.team().club().name()),
				new QuestionView.Asked(question.topic(), question.text(), question.askedBy(), question.takenBy(),
						question.askedAt()),
				given.stream().map(Ruling::view).toList());
	}

	/**
	 * A question to the referee on behalf of a team.
	 *
	 * @param entry whose question it is
	 * @param segment the one segment it is about, {@code null} for all
	 * @param text the question, up to 2000 characters
	 * @param askedBy who asks, up to 120 characters, such as the team's manager
	 */
	public record AskQuestion(EntryId entry, @Nullable SegmentId segment, QuestionView.RulingTopic topic, String text,
			String askedBy) {
	}

	/**
	 * A ruling on a question.
	 *
	 * @param seen how many rulings on it the referee was looking at: 0 to answer, more to
	 * supersede the last
	 * @param reason why the ruling before no longer holds, up to 500 characters; empty
	 * for the first
	 */
	public record GiveRuling(QuestionView.QuestionId question, int seen, RulingView.Answer answer, String reason) {

	}

}
