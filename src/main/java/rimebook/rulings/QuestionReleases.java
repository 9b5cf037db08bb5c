package rimebook.rulings;

import java.util.Optional;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.StillOpen;
import rimebook.entries.Entries;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.NotFoundException;

/**
 * Lets whoever announces or comments speak of a question that still waits for the
 * referee. Once it is ruled on, the ruling says itself whether it may be told.
 */
@Service
public class QuestionReleases {

	private final QuestionRepository questions;

	private final ReleaseRepository releases;

	private final Entries entries;

	private final StillOpen stillOpen;

	private final Acts acts;

	QuestionReleases(QuestionRepository questions, ReleaseRepository releases, Entries entries, StillOpen stillOpen,
			Acts acts) {
		this.questions = questions;
		this.releases = releases;
		this.entries = entries;
		this.stillOpen = stillOpen;
		this.acts = acts;
	}

	/**
	 * Release a question, or take that back; nothing happens where it stands so.
	 * @throws rimebook.shared.ConflictException what {@link StillOpen} refuses
	 * @throws NotFoundException if there is no such question
	 */
	@Transactional
	public void release(QuestionView.QuestionId id, boolean released, Actor actor) {
		Question question = this.questions.findLockedById(id.value())
			.orElseThrow(() -> NotFoundException.of("question", id));
		this.stillOpen.require(this.entries.entry(question.entry()).event());
		Optional<Release> before = this.releases.findFirstByQuestionOrderByNumberDesc(id.value());
		boolean was = before.map(Release::isReleased).orElse(false);
		if (was == released) {
			return;
		}
		this.releases.save(new Release(this.acts.nextId(), id.value(), before.map(Release::number).orElse(0) + 1,
				released, actor, this.acts.now()));
		this.acts.publish(AuditedChange
			.of(actor, "ruling", id, released ? "ruling.question-released" : "ruling.question-withheld")
			.from(Release.inWords(was), Release.inWords(released)));
	}

	/** Tell whether an open question may be spoken of. */
	@Transactional(readOnly = true)
	public boolean isReleased(QuestionView.QuestionId id) {
		return this.releases.findFirstByQuestionOrderByNumberDesc(id.value()).map(Release::isReleased).orElse(false);
	}

}
