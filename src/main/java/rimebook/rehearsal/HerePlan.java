package rimebook.rehearsal;

import java.util.List;
import java.util.stream.Stream;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.PlannedElements;
import rimebook.panels.Panels;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;

/**
 * What is marked in a rehearsal: whatever the crew opens, and what it leaves to the panel
 * as the whole crew, one segment after the other. A segment that is to be drawn, opened
 * or waits for a signature, and is refused, is the crew's to make ready.
 */
class HerePlan implements PanelPlan {

	private static final Log log = LogFactory.getLog(HerePlan.class);

	private static final List<CompetitionState> UP_TO = List.of(CompetitionState.ENTRIES_OPEN,
			CompetitionState.ENTRIES_CLOSED, CompetitionState.RUNNING);

	private final Competitions competitions;

	private final StartingOrderDraw draw;

	private final SegmentRun run;

	private final RuleSets ruleSets;

	private final PlannedElements plans;

	private final Panels panels;

	private final PanelCast cast;

	HerePlan(Competitions competitions, StartingOrderDraw draw, SegmentRun run, RuleSets ruleSets,
			PlannedElements plans, Panels panels, PanelCast cast) {
		this.competitions = competitions;
		this.draw = draw;
		this.run = run;
		this.ruleSets = ruleSets;
		this.plans = plans;
		this.panels = panels;
		this.cast = cast;
	}

	@Override
	public List<SegmentId> segments() {
		return held().map(SegmentView::id).filter((segment) -> !this.run.performances(segment).isEmpty()).toList();
	}

	private Stream<SegmentView> held() {
		return events().flatMap((event) -> event.segments().stream()).filter((segment) -> !segment.isCancelled());
	}

	private Stream<EventView> events() {
		return this.competitions.all()
			.stream()
			.flatMap((competition) -> this.competitions.events(competition.id()).stream())
			.filter((event) -> !event.isCancelled());
	}

	/** No copy has codes of seats, and without them no tablet joins. */
	void issueCodes() {
		events().forEach((event) -> {
			try {
				this.panels.issueCodes(event.id(), this.cast.referee());
			}
			catch (RimebookException ex) {
				log.info("The codes of " + event.name() + " are left to the crew: " + ex.getMessage());
			}
		});
	}

	@Override
	public PointsScript script(PerformanceView performance) {
		EventView event = this.competitions.eventOf(performance.segment());
		SegmentView segment = event.segment(performance.segment());
		return new InventedScript(this.plans.of(performance.entry(), segment.id()).codes(),
				this.ruleSets.of(event, segment), segment.name());
	}

	/** Draw and open a segment if none is open that could be marked. */
	void prepare() {
		if (segments().stream().allMatch(this::isOver)) {
			this.competitions.all().forEach(this::moveOn);
			held().map(SegmentView::id)
				.filter((segment) -> this.run.performances(segment).isEmpty())
				.filter(this::open)
				.findFirst();
		}
	}

	private boolean isOver(SegmentId segment) {
		return this.run.performances(segment).stream().allMatch((performance) -> performance.status().isDone());
	}

	private void moveOn(CompetitionView competition) {
		UP_TO.stream().filter((next) -> next.compareTo(competition.state()) > 0).forEach((next) -> {
			CompetitionView now = this.competitions.competition(competition.id());
			this.competitions.move(now.id(), now.version(), next, this.cast.secretary());
		});
	}

	/** Tell whether it is open now. */
	private boolean open(SegmentId segment) {
		Actor referee = this.cast.referee();
		try {
			if (this.draw.ofSegment(segment).isEmpty()) {
				StartingOrderDraw.Offer offer = this.draw.offer(segment);
				this.draw.draw(new StartingOrderDraw.Order(segment, offer.methods().get(0), "rehearsal",
						offer.groupMaximum(), ""), referee);
			}
			this.run.open(segment, referee);
			return true;
		}
		catch (RimebookException ex) {
			log.info("This segment is left to the crew: " + ex.getMessage());
			return false;
		}
	}

}
