package rimebook.live;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.wording.Sentence;

/**
 * The state of things in one sentence, from what is published alone: who leads, how many
 * are left, and, when few are, what they need.
 */
final class Headline {

	/** With more teams left, what one of them needs says little. */
	private static final int FEW = 3;

	private static final int FIRST = 1;

	private static final String EVENT = ".win-event";

	private static final String SEGMENT = ".win-segment";

	private Headline() {
	}

	/**
	 * Say it of a segment.
	 * @param whole the newest version of the event, {@code null} for none
	 */
	static Sentence ofSegment(EventView event, SegmentFacts facts, @Nullable ResultVersion whole) {
		if (event.isCancelled()) {
			return Sentence.of("headline.cancelled.event");
		}
		ResultVersion version = facts.version();
		return switch (facts.phase()) {
			case CANCELLED -> Sentence.of("headline.cancelled.segment");
			case NOT_DRAWN -> Sentence.of("headline.not-drawn");
			case DRAWN -> Sentence.of("headline.drawn", facts.starters());
			case STARTED -> started(facts);
			default -> result(facts, Claim.of(event, facts, Objects.requireNonNull(version), whole));
		};
	}

	/** Say it of an event. */
	static Sentence ofEvent(EventFacts facts) {
		if (facts.event().isCancelled()) {
			return Sentence.of("headline.cancelled.event");
		}
		ResultVersion whole = facts.version();
		SegmentFacts shown = facts.told();
		if (shown == null) {
			return Sentence.of("headline.not-drawn");
		}
		boolean between = !shown.phase().isRunning() && shown.skated() > 0
				&& !facts.event().isLastSegment(shown.segment().id());
		if (between && whole != null) {
			Claim claim = new Claim(true, whole);
			return claim.leaders().isEmpty() ? Sentence.of("headline.nobody")
					: Sentence.of("headline.between", shown.segment().name(), leads(claim), gap(claim));
		}
		return ofSegment(facts.event(), shown, whole);
	}

	/** Say it of a competition: of the event on which most eyes are. */
	static Sentence ofCompetition(List<EventFacts> events) {
		List<EventFacts> held = events.stream().filter((facts) -> !facts.event().isCancelled()).toList();
		if (held.isEmpty()) {
			return events.isEmpty() ? Sentence.NONE : Sentence.of("headline.competition.cancelled");
		}
		if (held.stream().allMatch(EventFacts::isOfficial)) {
			return Sentence.of("headline.competition.official", held.size());
		}
		return Watched.of(held)
			.map((watched) -> Sentence.of("headline.of", watched.facts().event().name(),
					watched.segment().segment().name(),
					ofSegment(watched.facts().event(), watched.segment(), watched.facts().version())))
			.orElseGet(() -> Sentence.of("headline.competition.none"));
	}

	private static Sentence started(SegmentFacts facts) {
		Start onIce = facts.onIce();
		if (onIce != null) {
			return Sentence.of("headline.first-on-ice", onIce.team(), facts.starters());
		}
		return facts.next(1)
			.stream()
			.findFirst()
			.map((next) -> Sentence.of("headline.first-to-come", next.team(), facts.starters()))
			.orElseGet(() -> Sentence.of("headline.nobody"));
	}

	private static Sentence result(SegmentFacts facts, Claim claim) {
		int left = facts.starters() - facts.skated();
		if (claim.leaders().isEmpty()) {
			return (left > 0) ? Sentence.of("headline.nobody-yet", left) : Sentence.of("headline.nobody");
		}
		return (left > 0) ? underWay(facts, claim, left) : complete(facts, claim);
	}

	private static Sentence underWay(SegmentFacts facts, Claim claim, int left) {
		Sentence far = (facts.skated() == FIRST) ? Sentence.of("headline.after-first", facts.starters()) : (left <= FEW)
				? Sentence.of("headline.left", left) : Sentence.of("headline.after", facts.skated(), facts.starters());
		Sentence rest = Stream.of(outOfTheLead(claim), need(claim, left), gap(claim))
			.filter((part) -> !part.isEmpty())
			.findFirst()
			.orElse(Sentence.NONE);
		return Sentence.of("headline.now", far, leads(claim), rest);
	}

	private static Sentence leads(Claim claim) {
		List<String> leaders = names(claim.leaders());
		return (leaders.size() == 1) ? Sentence.of(claim.key("headline.leads"), leaders.get(0))
				: Sentence.of(claim.key("headline.leads-together"), leaders);
	}

	/** The team that led in the version before and has no place any more. */
	private static Sentence outOfTheLead(Claim claim) {
		return claim.standing()
			.rows()
			.stream()
			.filter((row) -> Objects.equals(row.previousPlace(), FIRST) && row.place() == null && !row.waits())
			.findFirst()
			.map((row) -> Sentence.of("headline.out." + JustIn.word(row.status()), row.team()))
			.orElse(Sentence.NONE);
	}

	/** How far it is to those behind, and who they are. */
	private static Sentence gap(Claim claim) {
		List<Standing.Row> followers = claim.followers();
		if (claim.leaders().size() > 1 || followers.isEmpty()) {
			return Sentence.NONE;
		}
		Integer first = claim.leaders().get(0).total();
		Integer second = followers.get(0).total();
		if (claim.standing().isByPoints() && first != null && second != null && first > second) {
			return Sentence.of("headline.ahead-by", Sentence.of("figure.points", first - second), names(followers));
		}
		return Sentence.of("headline.ahead", names(followers));
	}

	/** What those still to skate need to be first, as it was published. */
	private static Sentence need(Claim claim, int left) {
		Standing.Outlook outlook = claim.standing().outlook();
		if (left > FEW || outlook == null) {
			return Sentence.NONE;
		}
		return claim.standing().isByPoints() ? needInPoints(claim, outlook.needs(), left)
				: needInPlaces(claim, outlook.needs(), left);
	}

	private static Sentence needInPoints(Claim claim, List<Sentence> needs, int left) {
		for (Sentence need : needs) {
			if (need.key().equals("score.needed.by") && need.arguments().get(1) instanceof Sentence needed
					&& needed.key().equals("score.needed") && isForFirst(claim, needed.arguments().get(0))) {
				return Sentence.of((left == 1) ? "headline.need.points" : "headline.need.points-now",
						need.arguments().get(0), needed.arguments().get(1));
			}
		}
		return Sentence.NONE;
	}

	private static boolean isForFirst(Claim claim, Object goal) {
		return goal instanceof Sentence place && place.arguments().get(0).equals(FIRST)
				&& claim.isMeantBy(place.key().equals("score.needed.in-event"));
	}

	/**
	 * A need is of the event only where the event ends with this segment; what is said of
	 * one is not said of the other.
	 */
	private static Sentence needInPlaces(Claim claim, List<Sentence> needs, int left) {
		List<Sentence> ours = needs.stream()
			.filter((need) -> need.key().endsWith(EVENT) || need.key().endsWith(SEGMENT))
			.filter((need) -> claim.isMeantBy(need.key().endsWith(EVENT)))
			.toList();
		List<Sentence> open = ours.stream().filter(Headline::isOpen).toList();
		if (left == 1 && ours.size() == 1) {
			return ofTheLast(ours.get(0));
		}
		return (ours.size() == left && !open.isEmpty()) ? Sentence.of("headline.need.open", open.size(), teams(open))
				: Sentence.NONE;
	}

	/** Tell whether it is neither certain nor lost. */
	private static boolean isOpen(Sentence need) {
		return need.key().equals("possible.need" + EVENT) || need.key().equals("possible.need" + SEGMENT);
	}

	private static Sentence ofTheLast(Sentence need) {
		Object team = need.arguments().get(2);
		if (isOpen(need)) {
			return Sentence.of("headline.need.places", team, need.arguments().get(3));
		}
		return Sentence.of(need.key().contains(".safe.") ? "headline.need.safe" : "headline.need.lost", team);
	}

	private static List<Object> teams(List<Sentence> needs) {
		List<Object> teams = new ArrayList<>();
		needs.forEach((need) -> teams.add(need.arguments().get(2)));
		return teams;
	}

	private static Sentence complete(SegmentFacts facts, Claim claim) {
		List<String> leaders = names(claim.leaders());
		String how = claim.isOfficial() ? "headline.official" : isReopened(facts, claim) ? "headline.reopened"
				: (facts.phase() == SegmentFacts.Phase.SKATED) ? "headline.skated" : "headline.posted";
		Sentence winner = (leaders.size() == 1) ? Sentence.of(claim.key("headline.first"), leaders.get(0))
				: Sentence.of(claim.key("headline.first-together"), leaders);
		Sentence won = (leaders.size() == 1) ? Sentence.of(claim.key("headline.won"), leaders.get(0))
				: Sentence.of(claim.key("headline.won-together"), leaders);
		return Sentence.of(how, facts.starters(), claim.isOfficial() ? won : winner);
	}

	private static boolean isReopened(SegmentFacts facts, Claim claim) {
		ResultVersion version = facts.version();
		return claim.version().cause() == ResultVersion.Cause.REOPENED
				|| (version != null && version.cause() == ResultVersion.Cause.REOPENED);
	}

	static List<String> names(Collection<Standing.Row> rows) {
		return rows.stream().map(Standing.Row::team).toList();
	}

	/** What a page of a segment is called, before what it says. */
	static String title(EventView event, SegmentView segment) {
		return event.name() + ", " + segment.name();
	}

}
