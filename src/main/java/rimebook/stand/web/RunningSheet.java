package rimebook.stand.web;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

import rimebook.clock.ClockView;
import rimebook.clock.PerformanceClock;
import rimebook.commentary.Announcement;
import rimebook.commentary.Commentary;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.draw.StartingOrderDraw;
import rimebook.draw.StartingOrderView;
import rimebook.entries.Entries;
import rimebook.entries.EntryState;
import rimebook.entries.EntryView;
import rimebook.entries.TeamView;
import rimebook.live.PageLanguage;
import rimebook.music.SpokenName;
import rimebook.music.SpokenNames;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.RunningOrder;
import rimebook.performances.SegmentRun;
import rimebook.rulings.QuestionView;
import rimebook.rulings.Rulings;
import rimebook.wording.Figures;
import rimebook.wording.Sentence;

/**
 * The running order as the announcer needs it, and what is read aloud. The order is made
 * from names, states and rulings alone; what is read aloud comes from what the public is
 * told. Cards are never read for it, so no mark can be on it before it is published.
 */
@Component
class RunningSheet {

	private final Competitions competitions;

	private final StartingOrderDraw draw;

	private final Entries entries;

	private final SegmentRun run;

	private final PerformanceClock clock;

	private final Rulings rulings;

	private final Commentary commentary;

	private final SpokenNames names;

	RunningSheet(Competitions competitions, StartingOrderDraw draw, Entries entries, SegmentRun run,
			PerformanceClock clock, Rulings rulings, Commentary commentary, SpokenNames names) {
		this.names = names;
		this.commentary = commentary;
		this.competitions = competitions;
		this.draw = draw;
		this.entries = entries;
		this.run = run;
		this.clock = clock;
		this.rulings = rulings;
	}

	/**
	 * Put it on the page.
	 * @param language in which the announcer speaks
	 */
	void into(SegmentId segment, PageLanguage language, Model model) {
		EventView event = this.competitions.eventOf(segment);
		model.addAttribute("event", event);
		model.addAttribute("segment", event.segment(segment));
		CompetitionView competition = this.competitions.competition(event.competition());
		model.addAttribute("competition", competition);
		List<SheetRow> rows = rows(segment);
		model.addAttribute("rows", rows);
		Map<String, String> recordings = this.names.of(rows.stream().map((row) -> row.team().id()).toList())
			.values()
			.stream()
			.collect(Collectors.toMap((name) -> name.team().toString(), SpokenName::sha256));
		model.addAttribute("recordings", recordings);
		String ice = ice(segment);
		model.addAttribute("ice", ice);
		Spoken spoken = spoken(competition, segment);
		model.addAttribute("aloud", spoken.now());
		model.addAttribute("introductions", spoken.introductions());
		model.addAttribute("figures", new Figures(language.locale()));
		model.addAttribute("language", language);
		model.addAttribute("languages", PageLanguage.SPOKEN);
		model.addAttribute("print",
				Integer.toHexString((rows + ice + spoken + recordings + language.locale()).hashCode()));
	}

	/** Of a competition that is only planned the public is told nothing yet. */
	private Spoken spoken(CompetitionView competition, SegmentId segment) {
		if (competition.state() == CompetitionState.PLANNED) {
			return new Spoken(List.of(), Map.of());
		}
		return new Spoken(Announcement.of(this.commentary.of(competition, segment, false)).parts(),
				this.commentary.introductions(competition, segment)
					.stream()
					.collect(Collectors.toMap((card) -> card.start().number(), Announcement::introduction)));
	}

	/**
	 * What is read aloud.
	 *
	 * @param now at this moment, in the order of speaking
	 * @param introductions of every team, by its starting number
	 */
	private record Spoken(List<Announcement.Part> now, Map<Integer, List<Sentence>> introductions) {
	}

	/**
	 * The last part of the message key for the team on the ice: how its skating stands.
	 */
	private String ice(SegmentId segment) {
		return this.run.performances(segment)
			.stream()
			.filter((performance) -> performance.status() == PerformanceStatus.ON_ICE)
			.findFirst()
			.map((performance) -> ice(this.clock.ofPerformance(performance.id())))
			.orElse("now");
	}

	private static String ice(ClockView clock) {
		if (clock.state() == ClockView.ClockState.INTERRUPTED) {
			return "interrupted";
		}
		return (clock.attempt().run() > 1 && clock.state() == ClockView.ClockState.WAITING) ? "reskate" : "now";
	}

	/** From the performances once the segment is open, before that from the draw. */
	private List<SheetRow> rows(SegmentId segment) {
		List<PerformanceView> performances = this.run.performances(segment);
		if (performances.isEmpty()) {
			List<SheetRow> drawn = drawn(segment);
			return SheetRow.withNext(drawn,
					drawn.stream().filter(SheetRow::isWaiting).findFirst().map(SheetRow::number).orElse(0));
		}
		return SheetRow.withNext(performances.stream().map(this::performed).toList(),
				RunningOrder.next(performances).map(PerformanceView::startNumber).orElse(0));
	}

	private List<SheetRow> drawn(SegmentId segment) {
		return this.draw.ofSegment(segment)
			.stream()
			.flatMap((order) -> order.starts().stream())
			.map((start) -> drawn(start, segment))
			.toList();
	}

	private SheetRow drawn(StartingOrderView.Start start, SegmentId segment) {
		EntryView entry = this.entries.entry(start.entry());
		return new SheetRow(start.number(), start.group(), entry.team(),
				(entry.state() == EntryState.WITHDRAWN) ? "gap" : "waiting",
				this.rulings.ofEntry(start.entry(), segment));
	}

	private SheetRow performed(PerformanceView performance) {
		return new SheetRow(performance.startNumber(), performance.start().group(),
				this.entries.entry(performance.entry()).team(), mark(performance),
				this.rulings.ofEntry(performance.entry(), performance.segment()));
	}

	/** Who was never called and is not waiting will not skate. */
	private static String mark(PerformanceView performance) {
		return switch (performance.status()) {
			case WAITING -> "waiting";
			case ON_ICE -> "now";
			default -> (performance.turn().calledAt() != null) ? "done" : "gap";
		};
	}

	/**
	 * One line for the announcer.
	 *
	 * @param mark how it stands: now, next, waiting, done or gap
	 * @param rulings for the team in this segment
	 */
	record SheetRow(int number, int group, TeamView team, String mark, List<QuestionView> rulings) {

		/** How the name is said, the name itself where nothing else is known. */
		public String said() {
			return this.team.spokenAs().isBlank() ? this.team.name() : this.team.spokenAs();
		}

		/** The same lines, that number marked as next. */
		static List<SheetRow> withNext(List<SheetRow> rows, int next) {
			return rows.stream().map((row) -> (row.number == next) ? row.asNext() : row).toList();
		}

		private SheetRow asNext() {
			return new SheetRow(this.number, this.group, this.team, "next", this.rulings);
		}

		boolean isWaiting() {
			return this.mark.equals("waiting");
		}

		/** Tell whether the announcer needs to be told how to say the name. */
		public boolean isSpokenOtherwise() {
			return !said().equals(this.team.name());
		}

	}

}
