package rimebook.tabulation.possible;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import rimebook.tabulation.EntryPlaces;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentStanding;
import rimebook.tabulation.TabulationException;

import static org.assertj.core.api.Assertions.assertThat;

/** A situation in which things do not fit ends in an answer or a named refusal. */
class AbsurdSituationsTests {

	private static final int INPUTS = 3_000;

	private final Random random = new Random(2_004);

	private final TreeSet<String> refusals = new TreeSet<>();

	private int answers;

	@Test
	void everySituationEndsInAnAnswerOrARefusal() {
		for (int i = 0; i < INPUTS; i++) {
			attempt();
		}
		assertThat(this.answers).isGreaterThan(INPUTS / 10);
		assertThat(this.refusals).containsExactly("duplicate-entry", "earlier-places-missing", "entry-missing",
				"incomplete-ranking", "nobody-to-skate", "other-rules", "uneven-places");
	}

	private void attempt() {
		RandomSituation one = situation();
		RandomSituation other = sane() ? one : situation();
		try {
			SegmentStanding standing = PlacementTabulation.ofCards(one.rules(), one.entries());
			PlacementRules rules = sane() ? one.rules() : other.rules();
			SegmentUnderWay underWay = SegmentUnderWay.of(rules, standing, sane() ? one.toSkate() : names());
			PossiblePlaces said = StillPossible
				.of(this.random.nextBoolean() ? underWay : underWay.after(earlier(other.earlier())));
			assertThat(sentences(said)).allMatch((sentence) -> sentence.endsWith("."));
			this.answers++;
		}
		catch (TabulationException ex) {
			assertThat(ex).hasMessageEndingWith(".");
			this.refusals.add(ex.code());
		}
	}

	private RandomSituation situation() {
		return RandomSituation.next(this.random, PlacementRules.PlacementMethod.values()[this.random.nextInt(2)],
				1 + 2 * this.random.nextInt(3), 4, 1 + this.random.nextInt(4));
	}

	private SegmentUnderWay.EarlierSegments earlier(SegmentUnderWay.EarlierSegments sane) {
		List<EntryPlaces> places = new ArrayList<>(sane.places());
		if (!sane()) {
			places.remove(this.random.nextInt(places.size()));
			places.add(EntryPlaces.of("M0", 1));
		}
		return new SegmentUnderWay.EarlierSegments(sane.rules(), places);
	}

	private List<String> names() {
		return Stream.generate((Supplier<String>) () -> List.of("U0", "M0", " ", "😀").get(this.random.nextInt(4)))
			.limit(this.random.nextInt(4))
			.toList();
	}

	private boolean sane() {
		return this.random.nextInt(6) != 0;
	}

	private static List<String> sentences(PossiblePlaces said) {
		List<String> sentences = new ArrayList<>();
		for (PossiblePlaces.Outlook team : said.teams()) {
			sentences.add(PossibleWords.inSegment(team, (name) -> name).english());
			if (team.event() != null) {
				sentences.add(PossibleWords.inEvent(team, (name) -> name).english());
			}
		}
		said.needs()
			.forEach((need) -> sentences.add(PossibleWords.need(need, said.isOfEvent(), (name) -> name).english()));
		return sentences;
	}

}
