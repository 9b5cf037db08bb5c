package rimebook.commentary;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import rimebook.live.ToldSegment;
import rimebook.published.Standing;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/**
 * What an announcer reads aloud, in the order of speaking. Pure: the same facts are the
 * same sentences.
 *
 * @param introduction of the team on the ice; between two teams what there is to wait for
 * @param result of the team that was marked last, empty where that is no news
 * @param standing who leads, by how much, and what the last teams need
 * @param next who comes next
 */
public record Announcement(List<Sentence> introduction, List<Sentence> result, List<Sentence> standing,
		List<Sentence> next) {

	public Announcement {
		introduction = List.copyOf(introduction);
		result = List.copyOf(result);
		standing = List.copyOf(standing);
		next = List.copyOf(next);
	}

	/** Put it in words. */
	public static Announcement of(CommentaryView view) {
		return new Announcement(opening(view), result(view), standing(view), next(view));
	}

	private static List<Sentence> opening(CommentaryView view) {
		ToldSegment told = view.told();
		TeamCard now = view.now();
		if (now == null || !told.news().cancelled().isEmpty()) {
			return List.of();
		}
		if (told.ice().interrupted()) {
			return List.of(Sentence.of("commentary.say.interrupted", now.said()));
		}
		List<Sentence> said = new ArrayList<>();
		said.add(Sentence.of("commentary.say.on-ice", now.start().number(), now.said(), from(now)));
		said.addAll(about(now));
		return said;
	}

	/** What is said of a team when it comes on the ice, for the list of all of them. */
	public static List<Sentence> introduction(TeamCard card) {
		List<Sentence> said = new ArrayList<>();
		said.add(Sentence.of("commentary.say.team", card.start().number(), card.said(), from(card)));
		said.addAll(about(card));
		return said;
	}

	private static Sentence from(TeamCard card) {
		String club = card.team().club().name();
		String town = card.team().club().town();
		return town.isBlank() || club.contains(town) ? Sentence.of("commentary.say.from-club", club)
				: Sentence.of("commentary.say.from-town", club, town);
	}

	private static List<Sentence> about(TeamCard card) {
		List<Sentence> said = new ArrayList<>();
		Integer skaters = card.announced().skaters();
		if (skaters != null) {
			said.add(Sentence.of("commentary.say.skaters", skaters));
		}
		if (!card.announced().music().isEmpty()) {
			said.add(Sentence.of("commentary.say.music", card.announced().music()));
		}
		said.addAll(card.before());
		return said;
	}

	private static List<Sentence> result(CommentaryView view) {
		CommentaryView.LastMarked last = view.last();
		if (last == null) {
			return List.of();
		}
		List<Sentence> said = new ArrayList<>();
		Standing.Score score = last.marks().score();
		if (!last.status().isEmpty()) {
			return List.of(Sentence.of("commentary.say." + last.status(), last.said()));
		}
		if (score != null) {
			said.add(Sentence.of("commentary.say.points", last.said(), Sentence.of("figure.points", score.total()),
					Sentence.of("figure.points", score.elements()), Sentence.of("figure.points", score.components()),
					(score.deducted() > 0)
							? Sentence.of("commentary.say.less", Sentence.of("figure.points", score.deducted()))
							: Sentence.NONE));
		}
		else {
			said.add(Sentence.of("commentary.say.marks-of", last.said()));
			last.marks().lines().forEach((line) -> said.add(marks(line)));
		}
		Stream.of(last.changed()).filter((one) -> !one.isEmpty()).forEach(said::add);
		return said;
	}

	/** One after the other with commas, as marks are read out. */
	private static Sentence marks(GivenMarks.Line line) {
		List<Sentence> marks = new ArrayList<>();
		for (Integer mark : line.given()) {
			if (mark != null) {
				marks.add(Sentence.of("figure.decimal", mark));
			}
		}
		return Sentence.of("commentary.say.row." + line.key().replaceFirst("^live\\.marks\\.", ""),
				Series.withCommas(marks));
	}

	private static List<Sentence> standing(CommentaryView view) {
		List<Sentence> said = new ArrayList<>();
		said.add(view.told().news().headline());
		said.addAll(view.outlook().needs());
		said.addAll(view.outlook().flips());
		return said.stream().filter((one) -> !one.isEmpty()).toList();
	}

	private static List<Sentence> next(CommentaryView view) {
		ToldSegment told = view.told();
		if (!told.news().cancelled().isEmpty() || told.ice().order().isEmpty()) {
			return List.of();
		}
		if (!view.next().isEmpty()) {
			return then(view.next());
		}
		return told.isUnderWay() && view.now() != null ? List.of(Sentence.of("commentary.say.last")) : List.of();
	}

	private static List<Sentence> then(List<TeamCard> next) {
		TeamCard first = next.get(0);
		List<Sentence> said = new ArrayList<>();
		said.add(Sentence.of("commentary.say.next", first.said(), from(first)));
		List<String> rest = next.stream().skip(1).map(TeamCard::said).toList();
		if (!rest.isEmpty()) {
			said.add(Sentence.of("commentary.say.after-that", rest));
		}
		return said;
	}

	/** Tell whether there is nothing to say. */
	public boolean isEmpty() {
		return Stream.of(this.introduction, this.result, this.standing, this.next).allMatch(List::isEmpty);
	}

	/** All of it, one part after the other. */
	public List<Part> parts() {
		return Stream
			.of(new Part("introduction", this.introduction), new Part("result", this.result),
					new Part("standing", this.standing), new Part("next", this.next))
			.filter((part) -> !part.sentences().isEmpty())
			.toList();
	}

	/**
	 * What is said in one go.
	 *
	 * @param name the last part of the keys {@code commentary.part.…}
	 */
	public record Part(String name, List<Sentence> sentences) {
	}

}
