package rimebook.published;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

import rimebook.competition.DraftCompetition;
import rimebook.competition.JudgingMethod;
import rimebook.panels.SeatKind;
import rimebook.performances.ClosedCards;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.Hundredths;
import rimebook.wording.Sentence;

/**
 * A standing with everything a reader needs to check it; the body of a published version.
 * A pure function of rule set, order, closed cards and statuses: it holds no time, so the
 * same facts give the same bytes.
 *
 * @param competition the competition's name
 * @param event the event's name
 * @param segment the segment's name, empty for the whole event
 * @param rulebook the rulebook named by the competition
 * @param ruleSet the judging method and chosen policies
 * @param method {@code MAJORITY}, {@code ONE_BY_ONE} or {@code POINTS}
 * @param judges how many judges count
 * @param skated how many of the starters are done, with or without marks
 * @param starters how many teams of the starting order did not withdraw
 * @param firstMark what the first mark is called, empty for the whole event and in points
 * judging
 * @param secondMark what the second mark is called, empty where the first is
 * @param segments the segments combined, in order; empty for a segment's own standing
 * @param rows in place order, those without a place after them
 * @param outlook what is still possible; {@code null} where there is nothing to say
 * @param panel how the panel differs from the one drawn; {@code null} where it does not
 * @param officials who sat on the panel, in its order; {@code null} for a whole event and
 * in versions from before they were kept
 * @param venue where and when it was held; {@code null} in versions from before that was
 * kept
 */
public record Standing(String competition, String event, String segment, String rulebook, Sentence ruleSet,
		String method, int judges, int skated, int starters, String firstMark, String secondMark,
		List<SegmentColumn> segments, List<Row> rows,
		@JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Outlook outlook,
		@JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Panel panel,
		@JsonInclude(JsonInclude.Include.NON_NULL) @Nullable List<Official> officials,
		@JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Venue venue) {

	/** The status of a team that is still to skate a segment of the event. */
	public static final String WAITING = "WAITING";

	public Standing {
		segments = List.copyOf(segments);
		rows = List.copyOf(rows);
		officials = (officials != null) ? List.copyOf(officials) : null;
	}

	/** As the full form, without an outlook. */
	public Standing(String competition, String event, String segment, String rulebook, Sentence ruleSet, String method,
			int judges, int skated, int starters, String firstMark, String secondMark, List<SegmentColumn> segments,
			List<Row> rows) {
		this(competition, event, segment, rulebook, ruleSet, method, judges, skated, starters, firstMark, secondMark,
				segments, rows, null, null, null, null);
	}

	/** The same standing with what is still possible from there. */
	public Standing with(Outlook outlook) {
		return new Standing(this.competition, this.event, this.segment, this.rulebook, this.ruleSet, this.method,
				this.judges, this.skated, this.starters, this.firstMark, this.secondMark, this.segments, this.rows,
				outlook.isEmpty() ? null : outlook, this.panel, this.officials, this.venue);
	}

	/** The same standing with its panel, and with what differs from the one drawn. */
	public Standing with(ClosedCards.CountedPanel panel) {
		return new Standing(this.competition, this.event, this.segment, this.rulebook, this.ruleSet, this.method,
				this.judges, this.skated, this.starters, this.firstMark, this.secondMark, this.segments, this.rows,
				this.outlook, panel.isAsDrawn() ? null : new Panel(panel.judges(), panel.notes()),
				panel.seated().stream().map(Official::of).toList(), this.venue);
	}

	/** The same standing with where and when its competition is held. */
	public Standing with(Venue venue) {
		return new Standing(this.competition, this.event, this.segment, this.rulebook, this.ruleSet, this.method,
				this.judges, this.skated, this.starters, this.firstMark, this.secondMark, this.segments, this.rows,
				this.outlook, this.panel, this.officials, venue);
	}

	/** The same standing without the row of a team. */
	public Standing without(String entry) {
		return new Standing(this.competition, this.event, this.segment, this.rulebook, this.ruleSet, this.method,
				this.judges, this.skated, this.starters, this.firstMark, this.secondMark, this.segments,
				this.rows.stream().filter((row) -> !row.entry().equals(entry)).toList(), this.outlook, this.panel,
				this.officials, this.venue);
	}

	/** The same standing without the names of its panel and what is said of it. */
	public Standing withoutPeople() {
		return new Standing(this.competition, this.event, this.segment, this.rulebook, this.ruleSet, this.method,
				this.judges, this.skated, this.starters, this.firstMark, this.secondMark, this.segments, this.rows,
				this.outlook, (this.panel != null) ? new Panel(this.panel.judges(), List.of()) : null, null,
				this.venue);
	}

	/** The numbers of the judges in the order of the cards. */
	public List<Integer> judgeNumbers() {
		return (this.panel != null) ? this.panel.judges() : IntStream.rangeClosed(1, this.judges).boxed().toList();
	}

	/** How the panel differs from the one drawn, a sentence each. */
	public List<Sentence> panelNotes() {
		return (this.panel != null) ? this.panel.notes() : List.of();
	}

	/** The way of judging that made it. */
	public JudgingMethod judgedBy() {
		return JudgingMethod.valueOf(this.method);
	}

	/** Tell whether the teams have points and not ordinals. */
	@JsonIgnore
	public boolean isByPoints() {
		return judgedBy().isPoints();
	}

	/** Tell whether nobody is left to skate. */
	public boolean isComplete() {
		return this.skated == this.starters;
	}

	/**
	 * Where and when a competition is held.
	 *
	 * @param zone the time zone of the rink, in which sheets tell times
	 */
	public record Venue(String place, LocalDate firstDay, LocalDate lastDay, ZoneId zone) {

		/** As the secretary wrote it down. */
		public static Venue of(DraftCompetition facts) {
			return new Venue(facts.place(), facts.firstDay(), facts.lastDay(), facts.zone());
		}

	}

	/**
	 * How the panel differs from the one drawn.
	 *
	 * @param judges the numbers of the judges that count
	 * @param notes a sentence each
	 */
	public record Panel(List<Integer> judges, List<Sentence> notes) {

		public Panel {
			judges = List.copyOf(judges);
			notes = List.copyOf(notes);
		}

	}

	/**
	 * Who had a seat on the panel.
	 *
	 * @param seat what the seat is called
	 * @param judge the judge's number, 0 for other seats
	 * @param club empty for none
	 */
	public record Official(Sentence seat, int judge, String name, String club) {

		private static Official of(ClosedCards.SeatedOfficial seated) {
			boolean judge = seated.place().kind() == SeatKind.JUDGE;
			return new Official(seated.place().spoken(), judge ? seated.place().number() : 0, seated.name(),
					seated.club());
		}

	}

	/**
	 * A segment as a column of the combined standing.
	 *
	 * @param factor in hundredths: 50 is 0.5
	 */
	public record SegmentColumn(String name, int factor) {
	}

	/**
	 * One team.
	 *
	 * @param place its place, {@code null} without one and while it is {@code WAITING}
	 * @param shared whether another team has the same place
	 * @param previousPlace its place in the version before, {@code null} if it had none
	 * @param entry the entry's identity
	 * @param startNumber its starting number in the segment, 0 in a combined standing
	 * @param status {@code SKATED}, {@code WITHDRAWN}, {@code NOT_FINISHED},
	 * {@code DISQUALIFIED} or, in a combined standing only, {@code WAITING}
	 * @param cards one a judge in panel order; empty without marks and in a combined
	 * standing
	 * @param figures the figures that decided, as the score sheet prints them
	 * @param segmentPlaces places in the combined segments, {@code null} where none
	 * @param total in hundredths: the factored total of a combined standing, in points
	 * judging also the points of a segment or of all together; {@code null} where there
	 * is none
	 * @param why one sentence that explains the place
	 * @param score what the points of a segment are made of; {@code null} without marks,
	 * in a combined standing and in placement judging
	 * @param segmentTotals points in the combined segments, {@code null} inside where
	 * none; {@code null} as a whole unless a combined standing of points judging
	 */
	public record Row(@Nullable Integer place, boolean shared, @Nullable Integer previousPlace, String entry,
			String team, String club, int startNumber, String status, List<Card> cards, List<Figure> figures,
			List<@Nullable Integer> segmentPlaces, @Nullable Integer total, Sentence why,
			@JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Score score,
			@JsonInclude(JsonInclude.Include.NON_NULL) @Nullable List<@Nullable Integer> segmentTotals) {

		public Row {
			cards = List.copyOf(cards);
			figures = List.copyOf(figures);
			segmentPlaces = Collections.unmodifiableList(new ArrayList<>(segmentPlaces));
			segmentTotals = (segmentTotals != null) ? Collections.unmodifiableList(new ArrayList<>(segmentTotals))
					: null;
		}

		/** As the full form, for placement judging. */
		public Row(@Nullable Integer place, boolean shared, @Nullable Integer previousPlace, String entry, String team,
				String club, int startNumber, String status, List<Card> cards, List<Figure> figures,
				List<@Nullable Integer> segmentPlaces, @Nullable Integer total, Sentence why) {
			this(place, shared, previousPlace, entry, team, club, startNumber, status, cards, figures, segmentPlaces,
					total, why, null, null);
		}

		/** Tell whether the team came through like this. */
		public boolean has(EntryStatus status) {
			return this.status.equals(status.name());
		}

		/** Tell whether the team is still in the event and only has no place yet. */
		public boolean waits() {
			return this.status.equals(WAITING);
		}

		/**
		 * The place the team takes from the others: its own, or the one that it leaves
		 * empty.
		 */
		public @Nullable Integer placeTaken() {
			return this.figures.stream()
				.flatMap((figure) -> figure.emptyPlace().stream())
				.findFirst()
				.orElse(this.place);
		}

	}

	/**
	 * One judge's card as it counts.
	 *
	 * @param first the first mark in hundredths
	 * @param second the second mark in hundredths
	 * @param ordinal the place this judge gave, a decimal as stored ("2", "1.5"); empty
	 * without one
	 */
	public record Card(int first, int second, String ordinal) {

		/** The place this judge gave in hundredths, {@code null} without one. */
		public @Nullable Integer ordinalHundredths() {
			return this.ordinal.isEmpty() ? null : Figure.hundredths(this.ordinal);
		}

	}

	/**
	 * A named figure.
	 *
	 * @param code the criterion in kebab-case, such as {@code size-of-majority}
	 * @param value a decimal as stored ("2", "1.5")
	 */
	public record Figure(String code, String value) {

		/** The code of the place for which a majority of judges stands. */
		public static final String MAJORITY_PLACE = "majority-place";

		private static final int DECIMALS = 2;

		/** The code of the place that a disqualified team leaves empty. */
		private static final String EMPTY_PLACE = "empty-place";

		/** A place that stays empty: the event counts it. */
		public static Figure ofEmptyPlace(int place) {
			return new Figure(EMPTY_PLACE, String.valueOf(place));
		}

		/** The place that stays empty, as a stored version has it; empty for others. */
		public Optional<Integer> emptyPlace() {
			return this.code.equals(EMPTY_PLACE) ? Optional.of(hundredths() / Hundredths.ONE) : Optional.empty();
		}

		/**
		 * The value in hundredths, whatever it counts: 1.5 is 150, two judges are 200.
		 */
		public int hundredths() {
			return hundredths(this.value);
		}

		private static int hundredths(String decimal) {
			return new BigDecimal(decimal).movePointRight(DECIMALS).intValueExact();
		}

	}

	/**
	 * The points of one performance with everything they are made of. All points, factors
	 * and marks are in hundredths; grades are as given.
	 *
	 * @param total elements and components less deductions
	 * @param elements points of all elements
	 * @param base base values that count, added up
	 * @param components points of all components, each after its factor
	 * @param deducted points taken off, not negative
	 */
	public record Score(int total, int elements, int base, int components, int deducted, List<ElementLine> elementLines,
			List<ComponentLine> componentLines, List<DeductionLine> deductionLines) {

		public Score {
			elementLines = List.copyOf(elementLines);
			componentLines = List.copyOf(componentLines);
			deductionLines = List.copyOf(deductionLines);
		}

		/**
		 * One called element.
		 *
		 * @param number its place in the programme, from 1
		 * @param code as called
		 * @param name the code in words
		 * @param worth {@code COUNTS}, {@code NO_VALUE} or {@code TOO_MANY}
		 * @param base its base value, 0 without value
		 * @param grades of each judge in panel order
		 * @param mean of the points of the grades that count, rounded
		 * @param score base value and mean together
		 */
		public record ElementLine(int number, String code, String name, String worth, int base, List<Mark> grades,
				int mean, int score) {

			public ElementLine {
				grades = List.copyOf(grades);
			}

		}

		/**
		 * One component.
		 *
		 * @param mean of the marks that count, rounded
		 * @param points the mean times the factor, rounded
		 */
		public record ComponentLine(String name, int factor, List<Mark> marks, int mean, int points) {

			public ComponentLine {
				marks = List.copyOf(marks);
			}

		}

		/**
		 * What one judge gave in one line.
		 *
		 * @param given the grade, or the mark in hundredths; {@code null} where there is
		 * none
		 * @param use {@code COUNTED}, {@code DROPPED_HIGHEST}, {@code DROPPED_LOWEST} or
		 * {@code ABSENT}
		 */
		public record Mark(@Nullable Integer given, String use) {
		}

		/**
		 * One deduction.
		 *
		 * @param item its short name in the rule set
		 * @param name as on the sheet
		 * @param points taken off, not negative
		 */
		public record DeductionLine(String item, String name, int count, int points) {
		}

	}

	/**
	 * What can still happen while teams are to skate, and what the newest team changed.
	 * Only what is proved stands here: a bound is marked as one.
	 *
	 * @param chances the places each team can still get, those marked first in their
	 * order; empty in points judging
	 * @param needs one sentence for each place that the next teams may hope for: what it
	 * takes
	 * @param flips one explanation for each two earlier teams whose order the newest
	 * changed
	 */
	public record Outlook(List<Chance> chances, List<Sentence> needs, List<Sentence> flips) {

		/** Nothing to say. */
		public static final Outlook NONE = new Outlook(List.of(), List.of(), List.of());

		public Outlook {
			chances = List.copyOf(chances);
			needs = List.copyOf(needs);
			flips = List.copyOf(flips);
		}

		/** Tell whether there is nothing to say. */
		@JsonIgnore
		public boolean isEmpty() {
			return this.chances.isEmpty() && this.needs.isEmpty() && this.flips.isEmpty();
		}

		/**
		 * One team.
		 *
		 * @param entry the entry's identity
		 * @param marked whether it has skated and been marked
		 * @param segment the places it can still get in the segment
		 * @param event the places it can still get in the event; {@code null} where the
		 * event does not end with this segment or is this segment
		 */
		public record Chance(String entry, String team, boolean marked, Range segment,
				@JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Range event) {
		}

		/**
		 * From the best place to the worst.
		 *
		 * @param exact whether both can really come about; otherwise the truth lies
		 * within
		 */
		public record Range(int best, int worst, boolean exact) {

			/** Tell whether one place only is left. */
			@JsonIgnore
			public boolean isCertain() {
				return this.best == this.worst;
			}

		}

	}

}
