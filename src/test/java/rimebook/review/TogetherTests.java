package rimebook.review;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionId;
import rimebook.competition.DraftEvent;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.review.Panel.gave;

/** A judge of two events is one person, whichever seat they had. */
class TogetherTests {

	@Test
	void aPersonIsTheSameInEverySeat() {
		List<AspectReview> together = Together
			.of(List.of(segment(event("Junior"), List.of("Ada Hart", "Bo Tally"), gave(10, 20), gave(30, 20)),
					segment(event("Senior"), List.of("Cy Frost", "Ada Hart"), gave(10, 20, 30), gave(10, 20, 30))));
		assertThat(together).hasSize(1);
		List<JudgeLine> judges = together.get(0).judges();
		assertThat(judges).extracting((judge) -> judge.who().english())
			.containsExactly("Ada Hart", "Bo Tally", "Cy Frost");
		assertThat(judges.get(0).seats()).hasToString("[Judge 1 in Junior, Judge 2 in Senior]");
		assertThat(judges.get(0).pairs()).isEqualTo(new Pairs(3, 1, 0, 0, 0));
		assertThat(judges.get(0).kendall()).isEqualTo(50);
		assertThat(judges.get(0).spearman()).isZero();
		assertThat(judges.get(0).distance()).isEqualTo(new JudgeLine.MarkDistance(5, 4, -4));
		assertThat(judges.get(1).kendall()).isEqualTo(-100);
		assertThat(judges.get(2).kendall()).isEqualTo(100);
	}

	@Test
	void seatsThatNobodyHasAreToldApartByTheirEvent() {
		EventView junior = event("Junior");
		List<AspectReview> together = Together.of(List.of(segment(junior, List.of("", ""), gave(10, 20), gave(30, 20)),
				segment(junior, List.of("", ""), gave(10, 20), gave(30, 20)),
				segment(event("Senior"), List.of("", ""), gave(10, 20), gave(10, 20))));
		assertThat(together.get(0).judges()).extracting((judge) -> judge.who().english())
			.containsExactly("Judge 1 in Junior", "Judge 2 in Junior", "Judge 1 in Senior", "Judge 2 in Senior");
		assertThat(together.get(0).judges().get(0).pairs().all()).isEqualTo(2);
	}

	@Test
	void whatNobodyJudgedIsNotThere() {
		assertThat(Together.of(List.of())).isEmpty();
	}

	@SafeVarargs
	private static MeasuredSegment segment(EventView event, List<String> names, List<Integer>... marks) {
		SegmentId id = new SegmentId(UUID.randomUUID());
		Standing standing = new Standing("", event.name(), "", "", Sentence.NONE, "MAJORITY", names.size(), 2, 2, "",
				"", List.of(), List.of());
		return new MeasuredSegment(event, new SegmentView(id, event.id(), 1, "free", CompetitionFixtures.aFree(), null),
				new ResultVersion(new ResultVersion.Key(ResultVersion.Scope.SEGMENT, id.value(), 1),
						ResultVersion.ResultState.PROVISIONAL,
						new ResultVersion.Reason(ResultVersion.Cause.CARDS_CLOSED, Sentence.NONE), Instant.EPOCH, "",
						standing),
				IntStream.range(0, names.size())
					.mapToObj((i) -> new ReviewedJudge(i + 1, names.get(i), false))
					.toList(),
				Map.of(Aspect.FIRST_MARK, Panel.of(marks)));
	}

	private static EventView event(String name) {
		DraftEvent draft = CompetitionFixtures.anEvent(name, 3);
		return new EventView(new EventId(UUID.randomUUID()),
				new EventView.Listing(new CompetitionId(UUID.randomUUID()), 1, name, name), draft.judging(), List.of(),
				null, 0);
	}

}
