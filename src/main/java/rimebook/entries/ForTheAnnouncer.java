package rimebook.entries;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.competition.StillOpen;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.Required;

/**
 * What teams let be told of them in each segment beside their names: how many skate and
 * to what. Whoever announces or comments sees it, and no public page. It may change as
 * long as anything of the segment may, since a skater can fall ill in the warm-up.
 */
@Service
@Transactional(readOnly = true)
public class ForTheAnnouncer {

	private final AnnouncedProgrammeRepository programmes;

	private final Entries entries;

	private final Competitions competitions;

	private final StillOpen stillOpen;

	private final Acts acts;

	ForTheAnnouncer(AnnouncedProgrammeRepository programmes, Entries entries, Competitions competitions,
			StillOpen stillOpen, Acts acts) {
		this.programmes = programmes;
		this.entries = entries;
		this.competitions = competitions;
		this.stillOpen = stillOpen;
		this.acts = acts;
	}

	/**
	 * Write it down in place of what was known; nothing happens where all is as before.
	 * @throws rimebook.shared.ConflictException {@code stale-version} if somebody else
	 * changed it since; what {@link StillOpen} refuses
	 * @throws rimebook.shared.NotFoundException if there is no such entry, or no such
	 * segment in its event
	 */
	@Transactional
	public Announced write(WriteDown order, Actor actor) {
		EventView event = this.competitions.event(this.entries.entry(order.entry()).event());
		SegmentView segment = event.segment(order.segment());
		this.competitions.holding(event.id());
		this.stillOpen.require(segment.id());
		AnnouncedProgramme programme = this.programmes
			.findByEntryAndSegment(order.entry().value(), segment.id().value())
			.orElseGet(() -> new AnnouncedProgramme(this.acts.nextId(), order.entry(), segment.id()));
		String before = programme.inWords();
		programme.write(order);
		if (before.equals(programme.inWords())) {
			return programme.view();
		}
		Announced kept = this.programmes.saveAndFlush(programme).view();
		this.acts.publish(AuditedChange.of(actor, "entry", order.entry(), "entry.announcer-facts")
			.from(words(segment, before), words(segment, programme.inWords())));
		return kept;
	}

	private static String words(SegmentView segment, String facts) {
		return segment.name() + ": " + (facts.isEmpty() ? "nothing for the announcer" : facts);
	}

	/** What is known; {@link Announced#NOTHING} where nothing is. */
	public Announced of(EntryId entry, SegmentId segment) {
		return this.programmes.findByEntryAndSegment(entry.value(), segment.value())
			.map(AnnouncedProgramme::view)
			.orElse(Announced.NOTHING);
	}

	/**
	 * What is told of a team in one segment.
	 *
	 * @param skaters how many are on the ice, {@code null} where that was not given
	 * @param music what they skate to, empty where that was not given
	 * @param version give it back with a change, so that nobody overwrites another's
	 */
	public record Announced(@Nullable Integer skaters, String music, int version) {

		/** The version of what was never written down. */
		static final int NONE = -1;

		/** Nothing was given. */
		public static final Announced NOTHING = new Announced(null, "", NONE);

	}

	/**
	 * The order to write it down.
	 *
	 * @param skaters from 1 to {@value #MOST_SKATERS}, {@code null} for not given
	 * @param music up to 300 characters, empty for not given
	 * @param version of what was seen
	 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
	 */
	public record WriteDown(EntryId entry, SegmentId segment, @Nullable Integer skaters, String music, int version) {

		/** Twice a full team: only a slip of the finger is refused. */
		public static final int MOST_SKATERS = 32;

		public WriteDown {
			skaters = (skaters != null) ? Required.number("skaters", skaters, 1, MOST_SKATERS) : null;
			music = Required.optional("music", music, 300);
		}

	}

}
