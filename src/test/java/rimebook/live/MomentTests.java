package rimebook.live;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class MomentTests {

	private static final Moment.SegmentMoment SHORT = new Moment.SegmentMoment("s", 13, 13, null);

	private static final Moment.SegmentMoment FREE = new Moment.SegmentMoment("f", 1, null, "e1");

	private final Moment before = new Moment(0, Map.of("s", SHORT, "f", FREE));

	@Test
	void tellsOnlyWhatMoved() {
		Moment after = new Moment(0, Map.of("s", SHORT, "f", new Moment.SegmentMoment("f", 2, 1, null)));
		assertThat(after.since(this.before)).extracting(Signal::id).containsExactly("f");
		assertThat(this.before.since(this.before)).isEmpty();
		assertThat(this.before.all()).hasSize(2);
	}

	@Test
	void differsWhenThePlanDoes() {
		assertThat(new Moment(1, this.before.segments())).isNotEqualTo(this.before);
	}

	@Test
	void tellsThatTeamsAreExpectedAtOtherTimes() {
		Moment then = new Moment(0, this.before.segments(), new Moment.Times("c", 7));
		Moment later = new Moment(0, this.before.segments(), new Moment.Times("c", 8));
		assertThat(later.since(then)).extracting(Signal::json)
			.containsExactly("{\"scope\":\"times\",\"id\":\"c\",\"moment\":8,\"version\":null,\"onIce\":null}");
		assertThat(later).isNotEqualTo(then);
		assertThat(later.all()).hasSize(3);
		assertThat(later.seenWithTimes(List.of())).containsEntry("c", 8);
		assertThat(later.seen(List.of())).isEmpty();
	}

	@Test
	void knowsNothingOfASegmentThatIsNotThere() {
		Stage stage = new Stage();
		assertThat(this.before.seen(List.of(stage.freeSkating))).containsEntry(stage.freeSkating.id().toString(), 0);
	}

}
