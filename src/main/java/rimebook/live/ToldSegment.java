package rimebook.live;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.results.ResultVersion;
import rimebook.wording.Sentence;

/**
 * What everybody is told of a segment at a moment, for rooms that tell it in their own
 * way. Nothing is in it that a public page does not show.
 *
 * @param phase the last part of the keys {@code live.phase.…}
 * @param skated how many of the starters are done
 * @param starters how many teams of the order did not withdraw
 * @param ice who is on the ice and who comes next
 * @param news the state of things
 * @param version its newest standing, {@code null} before the first
 * @param whole the newest standing of the event, {@code null} before the first
 */
public record ToldSegment(EventView event, SegmentView segment, String phase, int skated, int starters, ToldIce ice,
		ToldNews news, @Nullable ResultVersion version, @Nullable ResultVersion whole) {

	static ToldSegment of(EventView event, SegmentFacts facts, Tidings tidings, @Nullable ResultVersion whole,
			Map<String, Instant> expected) {
		return new ToldSegment(event, facts.segment(), facts.phase().key(), facts.skated(), facts.starters(),
				ToldIce.of(facts, expected), ToldNews.of(tidings, facts), facts.version(), whole);
	}

	/** Tell whether a team is on the ice, or is still to be called there. */
	public boolean isUnderWay() {
		return this.phase.equals(SegmentFacts.Phase.STARTED.key())
				|| this.phase.equals(SegmentFacts.Phase.UNDER_WAY.key());
	}

	/** How many teams are still to be marked; the one on the ice among them. */
	public int left() {
		return Math.max(0, this.starters - this.skated);
	}

	/**
	 * Who is on the ice and who comes next.
	 *
	 * @param now the team on the ice, {@code null} for none
	 * @param interrupted whether it was broken off
	 * @param next those who come after it, in their order
	 * @param order all of the starting order, empty before the draw
	 */
	public record ToldIce(@Nullable ToldStart now, boolean interrupted, List<ToldStart> next, List<ToldStart> order) {

		public ToldIce {
			next = List.copyOf(next);
			order = List.copyOf(order);
		}

		private static ToldIce of(SegmentFacts facts, Map<String, Instant> expected) {
			Start now = facts.onIce();
			return new ToldIce((now != null) ? ToldStart.of(now, expected) : null, facts.isInterrupted(),
					facts.next(Integer.MAX_VALUE).stream().map((start) -> ToldStart.of(start, expected)).toList(),
					facts.starts().stream().map((start) -> ToldStart.of(start, expected)).toList());
		}

	}

	/**
	 * A team in the starting order.
	 *
	 * @param group the warm-up group
	 * @param entry the entry's identity
	 * @param mark how far it is, the last part of the keys {@code live.start.…}
	 * @param expected when it is expected today, {@code null} where nothing is known
	 */
	public record ToldStart(int number, int group, String entry, String team, String mark, @Nullable Instant expected) {

		private static ToldStart of(Start start, Map<String, Instant> expected) {
			return new ToldStart(start.number(), start.group(), start.entry(), start.team(),
					start.mark().name().toLowerCase(Locale.ROOT).replace('_', '-'), expected.get(start.entry()));
		}

	}

	/**
	 * The state of things.
	 *
	 * @param headline in one sentence
	 * @param certainty the last part of the keys {@code live.standing.…}, empty for
	 * neither
	 * @param last the entry that was marked last, {@code null} before the first
	 * @param changed what that changed, {@link Sentence#NONE} where it is no news any
	 * more
	 * @param cancelled why the segment does not take place, empty if it does
	 */
	public record ToldNews(Sentence headline, String certainty, @Nullable String last, Sentence changed,
			String cancelled) {

		private static ToldNews of(Tidings tidings, SegmentFacts facts) {
			Optional<JustIn> news = Optional.ofNullable(tidings.justIn());
			return new ToldNews(tidings.headline(), tidings.certainty().look(), news.map(JustIn::entry).orElse(null),
					news.map(JustIn::changed).orElse(Sentence.NONE), facts.cancelled());
		}

	}

}
