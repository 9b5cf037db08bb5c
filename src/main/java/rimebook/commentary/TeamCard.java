package rimebook.commentary;

import java.util.List;

import rimebook.entries.ForTheAnnouncer;
import rimebook.entries.TeamView;
import rimebook.live.ToldSegment;
import rimebook.rulings.QuestionView;
import rimebook.rulings.RulingView;
import rimebook.wording.Sentence;

/**
 * What may be told of a team while it skates.
 *
 * @param start where it stands in the starting order
 * @param announced what was written down for whoever announces it
 * @param elements what it means to skate, in order
 * @param called the elements called so far in words, in order; empty where that is not
 * told
 * @param rulings what the referee released about it
 * @param before what it did in the segments before this one
 * @param earlier its own results in events before
 */
public record TeamCard(ToldSegment.ToldStart start, TeamView team, ForTheAnnouncer.Announced announced,
		List<Planned> elements, List<String> called, List<Released> rulings, List<Sentence> before,
		List<Sentence> earlier) {

	public TeamCard {
		elements = List.copyOf(elements);
		called = List.copyOf(called);
		rulings = List.copyOf(rulings);
		before = List.copyOf(before);
		earlier = List.copyOf(earlier);
	}

	/** The entry's identity. */
	public String entry() {
		return this.start.entry();
	}

	/** The name as it is written. */
	public String name() {
		return this.team.name();
	}

	/** The name as it is said; the name itself where nothing else is known. */
	public String said() {
		return this.team.spokenAs().isBlank() ? this.team.name() : this.team.spokenAs();
	}

	/**
	 * A planned element.
	 *
	 * @param number its place in the plan, from 1
	 * @param name in words; the code itself where it has none
	 * @param state {@code done}, {@code now} for the one that was called last, else
	 * {@code to-come}
	 */
	public record Planned(int number, String code, String name, String state) {

		/** Tell whether there is a name beside the code. */
		public boolean isNamed() {
			return !this.name.equals(this.code);
		}

	}

	/**
	 * A ruling that may be told to anybody, or a question that may be and still waits.
	 *
	 * @param verdict the name of what was ruled, empty while the question is open
	 */
	public record Released(String topic, String question, String verdict, String condition, String grounds,
			String rule) {

		static Released of(QuestionView question) {
			RulingView ruling = question.current();
			if (ruling == null) {
				return new Released(question.topic().name(), question.text(), "", "", "", "");
			}
			RulingView.Answer answer = ruling.answer();
			return new Released(question.topic().name(), question.text(), answer.verdict().name(), answer.condition(),
					answer.grounds(), answer.rule());
		}

	}

}
