package rimebook.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/** Takes several segments together, person by person. */
final class Together {

	private final boolean severalEvents;

	private final Map<String, Person> people = new LinkedHashMap<>();

	private Together(boolean severalEvents) {
		this.severalEvents = severalEvents;
	}

	/** Every aspect that was judged, in their order. */
	static List<AspectReview> of(List<MeasuredSegment> segments) {
		boolean several = segments.stream().map((segment) -> segment.event().id()).distinct().count() > 1;
		return Stream.of(Aspect.values())
			.filter((aspect) -> segments.stream().anyMatch((segment) -> !segment.lines(aspect).isEmpty()))
			.map((aspect) -> new AspectReview(aspect, aspect.spoken(), new Together(several).rows(aspect, segments),
					List.of(), List.of()))
			.toList();
	}

	private List<JudgeLine> rows(Aspect aspect, List<MeasuredSegment> segments) {
		for (MeasuredSegment segment : segments) {
			for (int judge = 0; judge < segment.judges().size() && !segment.lines(aspect).isEmpty(); judge++) {
				add(segment, segment.judges().get(judge), segment.tally(aspect, judge));
			}
		}
		return this.people.values().stream().map(Person::row).toList();
	}

	private void add(MeasuredSegment segment, ReviewedJudge judge, Tally tally) {
		String key = judge.name().isEmpty() ? segment.event().id() + " " + judge.number() : judge.name();
		this.people.computeIfAbsent(key, (each) -> new Person(who(segment, judge)))
			.add(judge.name().isEmpty() ? null : seat(segment, judge), tally);
	}

	private Sentence who(MeasuredSegment segment, ReviewedJudge judge) {
		return judge.name().isEmpty() ? seat(segment, judge) : Sentence.said(judge.name());
	}

	private Sentence seat(MeasuredSegment segment, ReviewedJudge judge) {
		return this.severalEvents
				? Sentence.of("review.judge.in-event", judge.seat(), segment.version().standing().event())
				: judge.seat();
	}

	/** What was found of one person so far. */
	private static final class Person {

		private final Sentence who;

		private final Set<Sentence> seats = new LinkedHashSet<>();

		private final List<Tally> tallies = new ArrayList<>();

		Person(Sentence who) {
			this.who = who;
		}

		void add(@Nullable Sentence seat, Tally tally) {
			if (seat != null) {
				this.seats.add(seat);
			}
			this.tallies.add(tally);
		}

		JudgeLine row() {
			return JudgeLine.of(this.who, List.copyOf(this.seats),
					this.tallies.stream().reduce(Tally::plus).orElseThrow());
		}

	}

}
