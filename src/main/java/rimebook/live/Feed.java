package rimebook.live;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

import rimebook.audit.Anchor;
import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.draw.StartingOrderView;
import rimebook.entries.EntryView;
import rimebook.live.pictures.Course;
import rimebook.published.Standing;
import rimebook.timetable.plan.Estimate;
import rimebook.results.ResultVersion;
import rimebook.wording.Sentence;

/**
 * What programs are given. Members are only ever added; one without a value is
 * {@code null}, never left out. Times are ISO 8601 in UTC. Marks, factors, ordinals and
 * totals are decimal numbers, exact to the last digit.
 */
final class Feed {

	private Feed() {
	}

	static BigDecimal decimal(int hundredths) {
		return BigDecimal.valueOf(hundredths, 2).setScale((hundredths % 10 == 0) ? 1 : 2);
	}

	/** Points have always two decimals. */
	static BigDecimal points(int hundredths) {
		return BigDecimal.valueOf(hundredths, 2);
	}

	static @Nullable BigDecimal pointsOrNull(@Nullable Integer hundredths) {
		return (hundredths != null) ? points(hundredths) : null;
	}

	/** A competition in the list. */
	record CompetitionItem(String slug, String name, String place, String zone, LocalDate firstDay, LocalDate lastDay,
			String rulebook, String state) {

		static CompetitionItem of(CompetitionView view) {
			return new CompetitionItem(view.slug(), view.name(), view.facts().place(), view.zone().getId(),
					view.facts().firstDay(), view.facts().lastDay(), view.facts().rulebook(), view.state().name());
		}

	}

	/** All competitions. */
	record CompetitionList(List<CompetitionItem> competitions) {
	}

	/**
	 * One competition with its events; the headline says how things stand, in English.
	 */
	record CompetitionBody(CompetitionItem competition, List<EventItem> events, String headline) {
	}

	/** An event without its standing. */
	record EventItem(String slug, String name, String method, int judges, List<SegmentItem> segments) {

		static EventItem of(EventFacts facts) {
			EventView event = facts.event();
			return new EventItem(event.slug(), event.name(), event.judging().method().name(), event.judging().judges(),
					facts.segments().stream().map(SegmentItem::of).toList());
		}

	}

	/** A segment without its standing. */
	record SegmentItem(String id, String slug, String name, String kind, BigDecimal factor, String state, int skated,
			int starters, @Nullable Integer version, @Nullable Instant postedAt, @Nullable StartItem onIce) {

		static SegmentItem of(SegmentFacts facts) {
			return new SegmentItem(facts.segment().id().toString(), facts.segment().slug(), facts.segment().name(),
					facts.segment().kind().name(), decimal(facts.segment().factor()), facts.phase().name(),
					facts.skated(), facts.starters(), (facts.version() != null) ? facts.version().number() : null,
					(facts.result() != null) ? facts.result().postedAt() : null, StartItem.ofNullable(facts.onIce()));
		}

	}

	/** One event with its combined standing. */
	record EventBody(CompetitionItem competition, EventItem event, @Nullable StandingBody standing, String headline,
			@Nullable JustInBody justIn) {
	}

	/** One segment with a standing. */
	record SegmentBody(CompetitionItem competition, String event, SegmentItem segment, @Nullable StandingBody standing,
			String headline, @Nullable JustInBody justIn) {
	}

	/** The team that was marked last, until the next is or the result is posted. */
	record JustInBody(String entry, String team, @Nullable Integer place, String changed) {

		static @Nullable JustInBody ofNullable(@Nullable JustIn news) {
			return (news == null) ? null : new JustInBody(news.entry(), news.line().row().team(),
					news.line().row().place(), news.changed().english());
		}

	}

	/** Two teams of a standing; which of them is ahead, and why. */
	record WhyBody(int version, String state, String ahead, String behind, boolean level, String why,
			@Nullable Integer placeAhead, @Nullable Integer placeBehind) {

		static WhyBody of(ResultVersion version, Beside pair) {
			Standing.Row one = pair.one().row();
			Standing.Row other = pair.other().row();
			return new WhyBody(version.number(), version.state().name(), one.entry(), other.entry(), pair.isLevel(),
					pair.why().english(), one.place(), other.place());
		}

	}

	/** The published versions of a segment, the newest first. */
	record VersionList(List<VersionItem> versions) {
	}

	/** A published version without its rows. */
	record VersionItem(int version, String state, String cause, String note, Instant publishedAt, String fingerprint,
			int skated, int starters) {

		static VersionItem of(ResultVersion version) {
			return new VersionItem(version.number(), version.state().name(), version.cause().name(),
					PublicNote.of(version).english(), version.publishedAt(), version.fingerprint(),
					version.standing().skated(), version.standing().starters());
		}

	}

	/** The teams of a competition, event by event. */
	record TeamList(List<TeamItem> teams) {
	}

	/** A team of an event, and whether it is still in it. */
	record TeamItem(String entry, String event, String team, String club, boolean entered) {

		static TeamItem of(EventView event, EntryView entry) {
			return new TeamItem(entry.id().toString(), event.slug(), entry.team().name(), entry.team().club().name(),
					entry.isEntered());
		}

	}

	/** The places of all teams after each team of a segment. */
	record CourseBody(List<Integer> afterTeams, int flips, List<TrackBody> teams) {

		static CourseBody of(Course course) {
			return new CourseBody(course.steps(), course.flips(),
					course.lines()
						.stream()
						.map((line) -> new TrackBody(line.row().entry(), line.row().team(), line.places()))
						.toList());
		}

	}

	/** One team; a place is {@code null} where it had none. */
	record TrackBody(String entry, String team, List<@Nullable Integer> places) {
	}

	/** A published version. */
	record StandingBody(int version, String state, String cause, String note, Instant publishedAt, String fingerprint,
			String rulebook, String ruleSet, String method, int judges, int skated, int starters, String firstMark,
			String secondMark, List<ColumnBody> segments, List<RowBody> rows,
			@JsonInclude(JsonInclude.Include.NON_NULL) @Nullable OutlookBody outlook,
			@JsonInclude(JsonInclude.Include.NON_EMPTY) List<String> panelNotes,
			@JsonInclude(JsonInclude.Include.NON_NULL) @Nullable RecordBody record) {

		static StandingBody of(ResultVersion version, @Nullable Anchor anchor) {
			Standing standing = version.standing();
			return new StandingBody(version.number(), version.state().name(), version.cause().name(),
					PublicNote.of(version).english(), version.publishedAt(), version.fingerprint(), standing.rulebook(),
					standing.ruleSet().english(), standing.method(), standing.judges(), standing.skated(),
					standing.starters(), standing.firstMark(), standing.secondMark(),
					standing.segments().stream().map(ColumnBody::of).toList(),
					standing.rows().stream().map((row) -> RowBody.of(row, standing)).toList(),
					OutlookBody.ofNullable(standing.outlook()), english(standing.panelNotes()),
					RecordBody.ofNullable(anchor));
		}

	}

	/** The line of the record that tells of the version, and the text to keep of it. */
	record RecordBody(long line, String digest, String anchor) {

		static @Nullable RecordBody ofNullable(@Nullable Anchor anchor) {
			return (anchor == null) ? null : new RecordBody(anchor.line(), anchor.digest(), anchor.text());
		}

	}

	/** What can still happen; the chances as they were published, the rest in English. */
	record OutlookBody(List<Standing.Outlook.Chance> chances, List<String> needs, List<String> flips) {

		static @Nullable OutlookBody ofNullable(Standing.@Nullable Outlook outlook) {
			return (outlook == null) ? null
					: new OutlookBody(outlook.chances(), english(outlook.needs()), english(outlook.flips()));
		}

	}

	private static List<String> english(List<Sentence> sentences) {
		return sentences.stream().map(Sentence::english).toList();
	}

	/** A combined segment. */
	record ColumnBody(String name, BigDecimal factor) {

		static ColumnBody of(Standing.SegmentColumn column) {
			return new ColumnBody(column.name(), decimal(column.factor()));
		}

	}

	/** A team in a standing. */
	record RowBody(@Nullable Integer place, boolean shared, @Nullable Integer previousPlace, String entry, String team,
			String club, @Nullable Integer startNumber, String status, List<CardBody> cards, List<FigureBody> figures,
			List<@Nullable Integer> segmentPlaces, @Nullable BigDecimal total, String why, @Nullable ScoreBody score,
			@Nullable List<@Nullable BigDecimal> segmentTotals) {

		static RowBody of(Standing.Row row, Standing standing) {
			boolean byPoints = standing.isByPoints();
			List<CardBody> cards = IntStream.range(0, row.cards().size())
				.mapToObj((i) -> CardBody.of(standing.judgeNumbers().get(i), row.cards().get(i)))
				.toList();
			return new RowBody(row.place(), row.shared(), row.previousPlace(), row.entry(), row.team(), row.club(),
					(row.startNumber() > 0) ? row.startNumber() : null, row.status(), cards,
					row.figures().stream().map(FigureBody::of).toList(), row.segmentPlaces(),
					byPoints ? pointsOrNull(row.total()) : (row.total() != null) ? decimal(row.total()) : null,
					row.why().english(), (row.score() != null) ? ScoreBody.of(row.score()) : null,
					totals(row.segmentTotals()));
		}

		private static @Nullable List<@Nullable BigDecimal> totals(@Nullable List<@Nullable Integer> totals) {
			if (totals == null) {
				return null;
			}
			List<@Nullable BigDecimal> points = new ArrayList<>();
			totals.forEach((total) -> points.add(pointsOrNull(total)));
			return points;
		}

	}

	/** The points of one performance; grades are whole, everything else is decimal. */
	record ScoreBody(BigDecimal total, BigDecimal elementPoints, BigDecimal basePoints, BigDecimal componentPoints,
			BigDecimal deducted, List<ElementBody> elements, List<ComponentBody> components,
			List<DeductionBody> deductions) {

		static ScoreBody of(Standing.Score score) {
			return new ScoreBody(points(score.total()), points(score.elements()), points(score.base()),
					points(score.components()), points(score.deducted()),
					score.elementLines().stream().map(ElementBody::of).toList(),
					score.componentLines().stream().map(ComponentBody::of).toList(),
					score.deductionLines().stream().map(DeductionBody::of).toList());
		}

	}

	/** A called element. */
	record ElementBody(int number, String code, String name, String worth, BigDecimal base, List<MarkBody> grades,
			BigDecimal mean, BigDecimal score) {

		static ElementBody of(Standing.Score.ElementLine line) {
			return new ElementBody(line.number(), line.code(), line.name(), line.worth(), points(line.base()),
					MarkBody.of(line.grades(), BigDecimal::valueOf), points(line.mean()), points(line.score()));
		}

	}

	/** A component; the points are the mean times the factor. */
	record ComponentBody(String name, BigDecimal factor, List<MarkBody> marks, BigDecimal mean, BigDecimal points) {

		static ComponentBody of(Standing.Score.ComponentLine line) {
			return new ComponentBody(line.name(), Feed.points(line.factor()), MarkBody.of(line.marks(), Feed::points),
					Feed.points(line.mean()), Feed.points(line.points()));
		}

	}

	/** What one judge gave in one line, and whether it counts. */
	record MarkBody(int judge, @Nullable BigDecimal given, String use) {

		static List<MarkBody> of(List<Standing.Score.Mark> marks, IntFunction<BigDecimal> number) {
			return IntStream.range(0, marks.size()).mapToObj((i) -> of(i + 1, marks.get(i), number)).toList();
		}

		private static MarkBody of(int judge, Standing.Score.Mark mark, IntFunction<BigDecimal> number) {
			Integer given = mark.given();
			return new MarkBody(judge, (given != null) ? number.apply(given) : null, mark.use());
		}

	}

	/** A deduction; its points are taken off. */
	record DeductionBody(String item, String name, int count, BigDecimal points) {

		static DeductionBody of(Standing.Score.DeductionLine line) {
			return new DeductionBody(line.item(), line.name(), line.count(), Feed.points(line.points()));
		}

	}

	/** One judge's card. */
	record CardBody(int judge, BigDecimal first, BigDecimal second, @Nullable BigDecimal ordinal) {

		static CardBody of(int judge, Standing.Card card) {
			return new CardBody(judge, decimal(card.first()), decimal(card.second()),
					card.ordinal().isEmpty() ? null : new BigDecimal(card.ordinal()));
		}

	}

	/** A figure that decided. */
	record FigureBody(String code, BigDecimal value) {

		static FigureBody of(Standing.Figure figure) {
			return new FigureBody(figure.code(), new BigDecimal(figure.value()));
		}

	}

	/**
	 * A starting order, {@code null} members before the draw.
	 *
	 * @param times when its teams skate; empty where no timetable is published
	 */
	record OrderBody(CompetitionItem competition, String event, String segment, @Nullable DrawBody draw,
			List<StartItem> starts, List<TimeItem> times) {
	}

	/**
	 * When a team skates, UTC.
	 *
	 * @param planned when the published timetable has it on the ice
	 * @param expected when it is expected, {@code null} on other days and once it was
	 * called
	 * @param soonest where the band begins
	 * @param latest where it ends
	 */
	record TimeItem(String entry, Instant planned, @Nullable Instant expected, @Nullable Instant soonest,
			@Nullable Instant latest) {

		static TimeItem of(String entry, Instant planned, Estimate.@Nullable Expected expected) {
			return (expected == null) ? new TimeItem(entry, planned, null, null, null)
					: new TimeItem(entry, planned, expected.at(), expected.soonest(), expected.latest());
		}

	}

	/** How an order was drawn. */
	record DrawBody(int number, String method, String seed, int groupMaximum, Instant drawnAt, String reason,
			int added) {

		static DrawBody of(StartingOrderView order) {
			return new DrawBody(order.number(), order.how().method().name(), order.seed(), order.how().groupMaximum(),
					order.act().drawnAt(), order.act().reason(), order.how().added());
		}

	}

	/** A team in a starting order. */
	record StartItem(int number, int group, String entry, String team, String club, String status, String ticket,
			String digested) {

		static StartItem of(Start start) {
			return new StartItem(start.number(), start.group(), start.entry(), start.team(), start.club(),
					start.mark().name(), start.ticket(), start.digested());
		}

		static @Nullable StartItem ofNullable(@Nullable Start start) {
			return (start != null) ? of(start) : null;
		}

	}

}
