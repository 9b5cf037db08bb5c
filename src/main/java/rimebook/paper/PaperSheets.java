package rimebook.paper;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.CardArrival;
import rimebook.performances.CountingPanels;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/** Brings together what is known of the paper cards of a performance. */
@Component
class PaperSheets {

	private final PerformanceRegister performances;

	private final CardKeyings keyings;

	private final List<PaperCards> papers;

	private final CountingPanels panels;

	private final Competitions competitions;

	PaperSheets(PerformanceRegister performances, CardKeyings keyings, List<PaperCards> papers, CountingPanels panels,
			Competitions competitions) {
		this.performances = performances;
		this.keyings = keyings;
		this.papers = papers;
		this.panels = panels;
		this.competitions = competitions;
	}

	/** Every seat's card of a performance, in the order of the seats. */
	List<Sheet> of(PerformanceId id) {
		PerformanceView performance = this.performances.find(id);
		return sheets(performance, senders(performance.segment()));
	}

	/** The same of all performances of a segment whose cards are taken now. */
	List<Sheet> takingCards(SegmentId segment) {
		List<PerformanceView> taking = this.performances.takingCards(segment);
		if (taking.isEmpty()) {
			return List.of();
		}
		List<SeatView> senders = senders(segment);
		return taking.stream().flatMap((performance) -> sheets(performance, senders).stream()).toList();
	}

	/** The lines that a card of a performance has now; none before it is called. */
	List<PaperCards.CardLine> lines(PerformanceId id) {
		PerformanceView performance = this.performances.find(id);
		return paper(performance).map((paper) -> paper.lines(performance)).orElse(List.of());
	}

	/** Tell whether a seat's cards count in a segment. */
	boolean counts(SeatView seat, SegmentId segment) {
		return this.panels.of(segment).seats().stream().anyMatch((each) -> each.id().equals(seat.id()));
	}

	/**
	 * Take hold of a performance, for what is keyed in of a seat's card.
	 * @throws NotFoundException if there is no such performance for this seat
	 */
	Sheet hold(PerformanceId id, SeatId seat) {
		PerformanceView performance = this.performances.hold(id);
		return sheets(performance, senders(performance.segment())).stream()
			.filter((sheet) -> sheet.seat().id().equals(seat))
			.findFirst()
			.orElseThrow(CardArrival::notOfSeat);
	}

	/** The seats that have a card, in order. */
	private List<SeatView> senders(SegmentId segment) {
		return this.panels.of(segment).senders();
	}

	private List<Sheet> sheets(PerformanceView performance, List<SeatView> senders) {
		return paper(performance).map((paper) -> sheets(performance, paper, senders)).orElse(List.of());
	}

	private List<Sheet> sheets(PerformanceView performance, PaperCards paper, List<SeatView> senders) {
		Map<SeatId, PaperCards.HeldCard> held = paper.held(performance);
		CardKeyings.OfPerformance keyed = this.keyings.of(performance.id());
		return senders.stream()
			.map((seat) -> new Sheet(performance, paper, seat, held.get(seat.id()),
					keyed.state(seat.id(), held.get(seat.id())), keyed.of(seat.id())))
			.toList();
	}

	/** Empty where cards of that way of judging are never on paper. */
	private Optional<PaperCards> paper(PerformanceView performance) {
		EventView event = this.competitions.eventOf(performance.segment());
		return this.papers.stream().filter((paper) -> paper.isFor(event)).findFirst();
	}

	/** One seat's card of one performance with all that is known of it. */
	record Sheet(PerformanceView performance, PaperCards paper, SeatView seat, PaperCards.@Nullable HeldCard held,
			PaperState state, List<CardKeying> keyings) {

		Sentence spoken() {
			return this.seat.spoken();
		}

		String label() {
			return this.seat.label();
		}

		String words(PaperCards.KeyedCard card) {
			return this.paper.words(this.performance, card);
		}

		String heldInWords() {
			return (this.held != null) ? words(this.held.marks()) : "no card";
		}

		/** Who keyed what is received now, for the record. */
		String together(Actor actor) {
			PaperState.Voice other = this.state.other(actor);
			return "Keyed in from paper by " + ((other != null) ? other.by().words() + " and " : "") + actor.name()
					+ ((other == null) ? ", as received before." : ".");
		}

		/** What each of them says, for the record. */
		String said() {
			return this.state.voices()
				.stream()
				.map((voice) -> voice.by().words() + " " + words(voice.marks()))
				.collect(Collectors.joining("; "));
		}

		SeatPaper.Sight sight() {
			return new SeatPaper.Sight(this.state.keyings(), this.state.card());
		}

		SeatPaper seen(Actor viewer) {
			boolean differs = this.state.stage() == PaperState.Stage.DIFFER;
			return new SeatPaper(this.seat, SeatPaper.Stage.valueOf(this.state.stage().name()),
					new SeatPaper.Said(this.state.voices().stream().map(PaperState.Voice::by).toList(),
							this.state.voices().stream().anyMatch((voice) -> voice.isBy(viewer)),
							differs ? this.state.voices().stream().map(SeatPaper.Voice::of).toList() : List.of(),
							own(viewer)),
					this.held, sight());
		}

		private PaperCards.@Nullable KeyedCard own(Actor viewer) {
			return this.keyings.stream()
				.filter((keying) -> keying.isBy(viewer))
				.reduce((older, newer) -> newer)
				.map(CardKeying::marks)
				.orElse(null);
		}

	}

}
