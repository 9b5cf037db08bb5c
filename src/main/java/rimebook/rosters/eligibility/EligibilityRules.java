package rimebook.rosters.eligibility;

import java.time.LocalDate;

import org.jspecify.annotations.Nullable;

/**
 * What an event asks of its teams and their people. A figure that is {@code null} asks
 * nothing.
 *
 * @param membershipNumber whether everybody has to have one
 */
public record EligibilityRules(Size size, Ages ages, Sharing sharing, boolean membershipNumber) {

	/** Asks nothing at all. */
	public static final EligibilityRules NONE = new EligibilityRules(new Size(null, null, null, null),
			new Ages(Window.OPEN, Window.OPEN, null, 100, true), new Sharing(false, null), false);

	/**
	 * How many people.
	 *
	 * @param leastOnIce fewest who skate
	 * @param mostOnIce most who skate
	 * @param mostAlternates most who stand by
	 * @param rosterLimit most in all
	 */
	public record Size(@Nullable Integer leastOnIce, @Nullable Integer mostOnIce, @Nullable Integer mostAlternates,
			@Nullable Integer rosterLimit) {
	}

	/**
	 * How old they are on one day. Who has a birthday on that day has had it; who was
	 * born on 29 February has it on 1 March in other years (ours: no rulebook that was
	 * read says it). A rule that says "before 1 July" asks for the age on 30 June.
	 *
	 * @param window what is asked of the share
	 * @param others what is asked of those outside it, where not all have to be inside
	 * @param cutOff the day; without one no age is looked at
	 * @param share how many of a hundred have to be inside the window; a part of a person
	 * counts as a whole one, so 75 of 13 are 10
	 * @param alternatesCount whether those who stand by are looked at, too
	 */
	public record Ages(Window window, Window others, @Nullable LocalDate cutOff, int share, boolean alternatesCount) {

		/** Tell whether anybody's age is looked at. */
		public boolean areAsked() {
			return this.cutOff != null && !(this.window.isOpen() && this.others.isOpen());
		}

		/** How many of that many people have to be inside the window. */
		int needed(int people) {
			return (people * this.share + 99) / 100;
		}

	}

	/**
	 * Ages in full years, both bounds included.
	 */
	public record Window(@Nullable Integer youngest, @Nullable Integer oldest) {

		/** Holds every age. */
		public static final Window OPEN = new Window(null, null);

		boolean holds(int age) {
			return (this.youngest == null || age >= this.youngest) && (this.oldest == null || age <= this.oldest);
		}

		/** Tell whether it holds every age. */
		public boolean isOpen() {
			return this.youngest == null && this.oldest == null;
		}

	}

	/**
	 * People in several teams.
	 *
	 * @param oneTeam whether a person may be in one team of the event only
	 * @param otherSkaters how many of a hundred have to be other people than in each team
	 * of the same club that comes before
	 */
	public record Sharing(boolean oneTeam, @Nullable Integer otherSkaters) {
	}

}
