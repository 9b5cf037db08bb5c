package rimebook.managers;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.accounts.TeamLinks;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryId;
import rimebook.protests.ProtestView;
import rimebook.protests.Protests;
import rimebook.results.SegmentResultView;
import rimebook.results.Standings;
import rimebook.rulings.QuestionView;
import rimebook.rulings.Rulings;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;

/**
 * What the team of a link says to the officials: questions to the referee, and protests.
 */
@Service
@Transactional(readOnly = true)
public class OwnMatters {

	private final OwnTeam own;

	private final Rulings rulings;

	private final Protests protests;

	private final Standings standings;

	OwnMatters(OwnTeam own, Rulings rulings, Protests protests, Standings standings) {
		this.own = own;
		this.rulings = rulings;
		this.protests = protests;
		this.standings = standings;
	}

	/** The team's questions with the answers, the newest first. */
	public List<QuestionView> questions(TeamLinks.Pass pass) {
		List<QuestionView> asked = new ArrayList<>(this.rulings.askedFor(new EntryId(pass.entry())));
		Collections.reverse(asked);
		return asked;
	}

	/**
	 * Ask the referee.
	 * @throws rimebook.shared.RuleViolationException as {@link Rulings#ask}
	 */
	@Transactional
	public void ask(TeamLinks.Pass pass, Question typed, Actor actor) {
		this.rulings.ask(new Rulings.AskQuestion(new EntryId(pass.entry()), typed.segment(), typed.topic(),
				typed.text(), typed.askedBy()), actor);
	}

	/** The segments of the team's event, each with when a protest is heard. */
	public List<Hearing> hearings(TeamLinks.Pass pass) {
		OwnTeam.About about = this.own.about(pass);
		return about.takingPlace().stream().map((segment) -> hearing(about, segment)).toList();
	}

	/**
	 * One of them.
	 * @throws NotFoundException if the event has no such segment
	 */
	public Hearing hearing(TeamLinks.Pass pass, SegmentId id) {
		OwnTeam.About about = this.own.about(pass);
		return hearing(about, about.event().segment(id));
	}

	private Hearing hearing(OwnTeam.About about, SegmentView segment) {
		List<SegmentResultView.Posting> postings = this.standings.postings(segment.id());
		return new Hearing(segment, this.standings.result(segment.id()).isPresent(),
				postings.isEmpty() ? null : postings.get(postings.size() - 1),
				this.protests.ofSegment(segment.id())
					.stream()
					.filter((protest) -> protest.claim().entry().equals(about.entry().id()))
					.toList());
	}

	/**
	 * Hand in a protest now.
	 * @param posting the posted version that was seen, 0 before the first
	 * @return the protest, filed or refused by the rule
	 * @throws rimebook.shared.RuleViolationException as {@link Protests#file}
	 * @throws NotFoundException if the team's event has no such segment
	 */
	@Transactional
	public ProtestView protest(TeamLinks.Pass pass, SegmentId segment, Protest typed, int posting, Actor actor) {
		OwnTeam.About about = this.own.about(pass);
		return this.protests.file(new Protests.FileProtest(about.event().segment(segment).id(),
				new ProtestView.Claim(about.entry().id(), typed.category(), typed.text(), posting), typed.filedBy(),
				null), actor);
	}

	/**
	 * A question as typed.
	 *
	 * @param segment {@code null} for all
	 * @param askedBy who asks for the team
	 */
	public record Question(@Nullable SegmentId segment, QuestionView.RulingTopic topic, String text, String askedBy) {
	}

	/**
	 * A protest as typed.
	 *
	 * @param filedBy who protests for the team
	 */
	public record Protest(ProtestView.ProtestCategory category, String text, String filedBy) {
	}

	/**
	 * When protests of a segment are heard, and the team's own.
	 *
	 * @param begun whether it was opened, before which nobody protests
	 * @param posting the newest, {@code null} before the first
	 * @param protests the earliest first
	 */
	public record Hearing(SegmentView segment, boolean begun, SegmentResultView.@Nullable Posting posting,
			List<ProtestView> protests) {
	}

}
