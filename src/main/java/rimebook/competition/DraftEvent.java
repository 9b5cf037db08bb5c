package rimebook.competition;

import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.shared.Name;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.SegmentKind;
import rimebook.wording.Sentence;

/**
 * An event as the secretary writes it down.
 *
 * @param name the level, up to 120 characters, unlike the other events of the competition
 * @param segments one to three, in order, with different names
 * @throws RuleViolationException naming the field that does not fit; {@code panel-even}
 * when the number of judges is even without a reason
 */
public record DraftEvent(String name, Judging judging, List<DraftSegment> segments) {

	public DraftEvent {
		name = Name.required("name", name);
		judging = judging.checked();
		segments = List.copyOf(segments);
		checkSegments(segments);
	}

	/** The same event under another name. */
	public DraftEvent named(String name) {
		return new DraftEvent(name, this.judging, this.segments);
	}

	/** The same event, whose results are signed without waiting for protests. */
	public DraftEvent signedAtOnce() {
		return new DraftEvent(this.name, this.judging.signedAtOnce(), this.segments);
	}

	private static void checkSegments(List<DraftSegment> segments) {
		if (segments.isEmpty() || segments.size() > 3) {
			throw new RuleViolationException("segments-number", "segments",
					Sentence.of("competition.segments-number", segments.size()));
		}
		long names = segments.stream().map((segment) -> Slug.of(segment.name(), "segment")).distinct().count();
		if (names < segments.size()) {
			throw new RuleViolationException("segments-same-name", "segments",
					Sentence.of("competition.segments-same-name"));
		}
	}

	/**
	 * A segment as the secretary writes it down.
	 *
	 * @param name up to 120 characters, unlike the other segments of the event
	 * @param kind decides which mark breaks a tie on a judge's card
	 * @param factor weight of its places in hundredths, 1 to 999: 50 is 0.5
	 * @param programmeSeconds length of the programme, 30 seconds to 10 minutes
	 * @param toleranceSeconds how far a programme may be longer, 0 to 120
	 * @param shorterSeconds how far it may be shorter, 0 to 120; {@code null} where only
	 * the longest is limited
	 * @throws RuleViolationException naming the field that does not fit
	 */
	public record DraftSegment(String name, SegmentKind kind, int factor, int programmeSeconds, int toleranceSeconds,
			@Nullable Integer shorterSeconds) {

		private static final int MOST_TOLERANCE = 120;

		public DraftSegment {
			name = Name.required("name", name);
			checkFactor(factor);
			Required.number("programmeSeconds", programmeSeconds, 30, 600);
			Required.number("toleranceSeconds", toleranceSeconds, 0, MOST_TOLERANCE);
			if (shorterSeconds != null) {
				Required.number("shorterSeconds", shorterSeconds, 0, MOST_TOLERANCE);
			}
		}

		/** One whose programme may be as much shorter as longer. */
		public DraftSegment(String name, SegmentKind kind, int factor, int programmeSeconds, int toleranceSeconds) {
			this(name, kind, factor, programmeSeconds, toleranceSeconds, toleranceSeconds);
		}

		private static void checkFactor(int factor) {
			if (factor < 1 || factor > 999) {
				throw RuleViolationException.ofField("field-out-of-range", "factor",
						Sentence.of("competition.factor-out-of-range"));
			}
		}

	}

	/**
	 * By which rules the points of an event are counted. An event keeps the rule set it
	 * was opened with.
	 *
	 * @param ruleSet the identity of a rule set that is known here, such as
	 * {@code synchronized-2025-26}
	 * @param level the level of skating as the rule set names it, such as {@code senior}
	 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
	 */
	public record PointsChoice(String ruleSet, String level) {

		public PointsChoice {
			ruleSet = Required.text("points", ruleSet, 80);
			level = Required.text("points", level, 60);
		}

	}

	/**
	 * How an event is judged and its result is signed.
	 *
	 * @param judges 1 to 15, odd unless a reason is given; for points judging 3 to 9, odd
	 * or even
	 * @param evenPanelReason why the number of judges may be even, up to 500 characters;
	 * dropped when it is odd
	 * @param policies the rule set; {@link JudgingPolicies#usual()} unless the rulebook
	 * says otherwise
	 * @param points by which rules points are counted; dropped unless the method is
	 * points
	 * @param signatureWaits whether a result is signed only after the time for protests,
	 * as it is unless the rulebook says otherwise
	 */
	public record Judging(JudgingMethod method, int judges, String evenPanelReason, JudgingPolicies policies,
			@Nullable PointsChoice points, boolean signatureWaits) {

		/** By the usual rules, with a number of judges that asks for no reason. */
		public static Judging by(JudgingMethod method, int judges) {
			return new Judging(method, judges, "", JudgingPolicies.usual(), null, true);
		}

		/** By points. */
		public static Judging byPoints(int judges, PointsChoice points) {
			return new Judging(JudgingMethod.POINTS, judges, "", JudgingPolicies.usual(), points, true);
		}

		/**
		 * The same for a segment in which another number of judges count, even or odd.
		 */
		Judging countedBy(int judges) {
			return new Judging(this.method, judges, "A judge is left out of a segment.", this.policies, this.points,
					this.signatureWaits);
		}

		/** The same, signed without waiting for protests. */
		Judging signedAtOnce() {
			return new Judging(this.method, this.judges, this.evenPanelReason, this.policies, this.points, false);
		}

		/** What is kept of it, after it was found to be possible. */
		Judging checked() {
			Required.number("judges", this.judges, this.method.isPoints() ? 3 : 1, this.method.isPoints() ? 9 : 15);
			String reason = this.method.isPoints() ? ""
					: reasonFor(this.judges, Required.optional("evenPanelReason", this.evenPanelReason, 500));
			return new Judging(this.method, this.judges, reason, this.policies, pointsFor(this.method, this.points),
					this.signatureWaits);
		}

		private static @Nullable PointsChoice pointsFor(JudgingMethod method, @Nullable PointsChoice points) {
			if (method.isPoints() && points == null) {
				throw new RuleViolationException("rule-set-missing", "points",
						Sentence.of("competition.rule-set-missing"));
			}
			return method.isPoints() ? points : null;
		}

		private static String reasonFor(int judges, String reason) {
			if (judges % 2 == 1) {
				return "";
			}
			if (reason.isEmpty()) {
				throw new RuleViolationException("panel-even", "judges", Sentence.of("competition.panel-even", judges));
			}
			return reason;
		}

	}

}
