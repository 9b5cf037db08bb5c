package rimebook.live;

import java.util.List;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.wording.Sentence;

/**
 * What a page tells before its table.
 *
 * @param headline the state of things, {@link Sentence#NONE} for none
 * @param certainty how far it can be trusted to stay
 * @param justIn the team that was marked last, {@code null} where that is no news
 * @param winners those in the first places once nobody is left to skate, else empty
 * @param inEvent whether lead and places are those of the event
 */
record Tidings(Sentence headline, Certainty certainty, @Nullable JustIn justIn, List<Standing.Row> winners,
		boolean inEvent) {

	/** Nothing to tell. */
	static final Tidings NONE = new Tidings(Sentence.NONE, Certainty.NONE, null, List.of(), false);

	private static final int WINNING_PLACES = 3;

	Tidings {
		winners = List.copyOf(winners);
	}

	/**
	 * Tell of a segment.
	 * @param whole the newest version of the event, {@code null} for none
	 * @param last the entry that was marked last, {@code null} before the first
	 */
	static Tidings ofSegment(EventView event, SegmentFacts facts, @Nullable ResultVersion whole,
			@Nullable String last) {
		Sentence headline = Headline.ofSegment(event, facts, whole);
		ResultVersion version = facts.version();
		if (version == null || facts.phase() == SegmentFacts.Phase.CANCELLED || event.isCancelled()) {
			return new Tidings(headline, Certainty.NONE, null, List.of(), false);
		}
		Claim claim = Claim.of(event, facts, version, whole);
		boolean news = facts.phase() == SegmentFacts.Phase.UNDER_WAY || facts.phase() == SegmentFacts.Phase.SKATED;
		return new Tidings(headline, certainty(claim), news ? JustIn.of(last, StandingTable.of(version), claim) : null,
				version.standing().isComplete() ? winners(claim) : List.of(), claim.inEvent());
	}

	/**
	 * Tell of an event.
	 * @param last the entry that was marked last in the segment under way, {@code null}
	 * for none
	 */
	static Tidings ofEvent(EventFacts facts, @Nullable String last) {
		SegmentFacts told = facts.told();
		ResultVersion whole = facts.version();
		if (told != null && (told.phase().isRunning() || facts.event().isLastSegment(told.segment().id()))) {
			return ofSegment(facts.event(), told, whole, last);
		}
		return new Tidings(Headline.ofEvent(facts),
				(whole != null && !facts.event().isCancelled()) ? certainty(new Claim(true, whole)) : Certainty.NONE,
				null, List.of(), true);
	}

	/** Tell of a competition. */
	static Tidings ofCompetition(List<EventFacts> events) {
		List<EventFacts> held = events.stream().filter((facts) -> !facts.event().isCancelled()).toList();
		boolean official = !held.isEmpty() && held.stream().allMatch(EventFacts::isOfficial);
		return new Tidings(Headline.ofCompetition(events), official ? Certainty.OFFICIAL : Certainty.NONE, null,
				List.of(), false);
	}

	private static Certainty certainty(Claim claim) {
		return claim.isOfficial() ? Certainty.OFFICIAL : Certainty.PROVISIONAL;
	}

	private static List<Standing.Row> winners(Claim claim) {
		return claim.placed().stream().filter((row) -> Objects.requireNonNull(row.place()) <= WINNING_PLACES).toList();
	}

	/** Tell whether a row is that of the team that was marked last. */
	public boolean isJustIn(Standing.Row row) {
		return this.justIn != null && this.justIn.entry().equals(row.entry());
	}

	/** How far what is told can be trusted to stay. */
	enum Certainty {

		NONE, PROVISIONAL, OFFICIAL;

		/** The class of its look. */
		public String look() {
			return switch (this) {
				case NONE -> "";
				case PROVISIONAL -> "provisional";
				case OFFICIAL -> "official";
			};
		}

		/** The key of its word. */
		public String key() {
			return "live.standing." + look();
		}

	}

}
