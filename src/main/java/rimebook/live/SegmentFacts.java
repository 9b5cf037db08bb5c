package rimebook.live;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentView;
import rimebook.draw.DrawTicket;
import rimebook.draw.StartingOrderView;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.results.SegmentResultView;

/**
 * All that is public of a segment.
 *
 * @param order the starting order in force, {@code null} before the draw
 * @param result where its result stands, {@code null} before it is opened
 * @param version its newest standing, {@code null} before the first
 * @param postings every posting of its result, oldest first
 * @param cancelled why it does not take place, empty if it does
 * @param starts the starting order with the names of the teams, empty before the draw
 */
record SegmentFacts(SegmentView segment, @Nullable StartingOrderView order, @Nullable SegmentResultView result,
		@Nullable ResultVersion version, List<SegmentResultView.Posting> postings, String cancelled,
		List<Start> starts) {

	/**
	 * On which most eyes are, last: a team on the ice; between two teams; else what was
	 * published last.
	 */
	static final Comparator<SegmentFacts> MOST_WATCHED = Comparator
		.<SegmentFacts, Boolean>comparing((facts) -> facts.onIce() != null)
		.thenComparing((facts) -> facts.phase() == Phase.UNDER_WAY)
		.thenComparing(SegmentFacts::published);

	SegmentFacts {
		postings = List.copyOf(postings);
		starts = List.copyOf(starts);
	}

	/** The posting that a version rests on, {@code null} before the first. */
	public SegmentResultView.@Nullable Posting posting(int number) {
		return this.postings.stream()
			.filter((posting) -> posting.number() <= number)
			.reduce((earlier, later) -> later)
			.orElse(null);
	}

	public Phase phase() {
		return this.cancelled.isEmpty() ? phaseOfResult() : Phase.CANCELLED;
	}

	private Phase phaseOfResult() {
		if (this.version == null || (skated() == 0 && !this.version.standing().isComplete())) {
			return (this.order == null) ? Phase.NOT_DRAWN : (this.result == null) ? Phase.DRAWN : Phase.STARTED;
		}
		if (this.version.state() == ResultVersion.ResultState.OFFICIAL) {
			return Phase.OFFICIAL;
		}
		if (this.result != null && this.result.postedAt() != null) {
			return Phase.POSTED;
		}
		return this.version.standing().isComplete() ? Phase.SKATED : Phase.UNDER_WAY;
	}

	/** The key of the state in words; what fills its places are skated and starters. */
	public String key() {
		return "live.phase." + phase().key();
	}

	public int skated() {
		return (this.version != null) ? this.version.standing().skated() : 0;
	}

	public int starters() {
		return (this.version != null) ? this.version.standing().starters()
				: (int) this.starts.stream().filter((start) -> !start.isGap()).count();
	}

	/** Its newest standing laid out, {@code null} before the first. */
	public @Nullable StandingTable table() {
		return (this.version != null) ? StandingTable.of(this.version) : null;
	}

	/** Tell whether a team stands in it. */
	public boolean has(String entry) {
		return this.version != null
				&& this.version.standing().rows().stream().anyMatch((row) -> row.entry().equals(entry));
	}

	int position() {
		return this.segment.position();
	}

	private Instant published() {
		return (this.version != null) ? this.version.publishedAt() : Instant.EPOCH;
	}

	/** The team that leads, {@code null} before anybody has a place. */
	public Standing.@Nullable Row leader() {
		return (this.version != null) ? leader(this.version.standing()).orElse(null) : null;
	}

	private static Optional<Standing.Row> leader(Standing standing) {
		return standing.rows().stream().filter((row) -> row.place() != null).findFirst();
	}

	/** The team on the ice, {@code null} for none. */
	public @Nullable Start onIce() {
		return this.starts.stream().filter((start) -> start.mark() == Start.Mark.ON_ICE).findFirst().orElse(null);
	}

	/** Tell whether the team on the ice was broken off. */
	public boolean isInterrupted() {
		return this.result != null && this.result.interrupted();
	}

	/**
	 * The teams that come next, at most so many: the order goes on behind the last team
	 * that skated, and those that were passed over come after all others.
	 */
	public List<Start> next(int most) {
		int furthest = this.starts.stream().filter(Start::hasBeenCalled).mapToInt(Start::number).max().orElse(0);
		return this.starts.stream()
			.filter((start) -> start.mark() == Start.Mark.TO_COME)
			.sorted(Comparator.comparing((Start start) -> start.number() < furthest))
			.limit(most)
			.toList();
	}

	/** Tell whether there is anything to say about the ice. */
	public boolean isIceOfInterest() {
		return onIce() != null || (phase().isRunning() && !next(1).isEmpty());
	}

	/** The starting order cut into its warm-up groups. */
	public List<Group> groups() {
		return this.starts.stream()
			.map(Start::group)
			.distinct()
			.map((group) -> new Group(group, this.starts.stream().filter((start) -> start.group() == group).toList()))
			.toList();
	}

	/**
	 * A warm-up group.
	 *
	 * @param number 1 first
	 */
	record Group(int number, List<Start> starts) {
	}

	/**
	 * How anybody can make the ticket of the team that starts first, in a shell; empty
	 * before the draw.
	 */
	public String shellCommand() {
		if (this.order == null || this.starts.isEmpty()) {
			return "";
		}
		return this.order.starts().get(0).command();
	}

	/**
	 * The text that was digested for a team, where a name was mended since the draw, so
	 * that the names on the page do not give it; else empty.
	 */
	public String drawnAs(Start start) {
		if (this.order == null) {
			return "";
		}
		String now = DrawTicket.textOf(this.order.seed(), this.segment.name(), start.team(), start.club());
		return now.equals(start.digested()) ? "" : start.digested();
	}

	/** How far a segment is. */
	enum Phase {

		NOT_DRAWN, DRAWN, STARTED, UNDER_WAY, SKATED, POSTED, OFFICIAL, CANCELLED;

		public String key() {
			return name().toLowerCase(Locale.ROOT).replace('_', '-');
		}

		/** The class of its mark in the style sheet. */
		public String look() {
			return switch (this) {
				case NOT_DRAWN, DRAWN -> "";
				case STARTED, UNDER_WAY -> "now";
				case SKATED, POSTED -> "done";
				case OFFICIAL -> "signed";
				case CANCELLED -> "stop";
			};
		}

		public boolean isRunning() {
			return this == STARTED || this == UNDER_WAY;
		}

	}

}
