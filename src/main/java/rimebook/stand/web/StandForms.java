package rimebook.stand.web;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

import rimebook.pages.Choice;
import rimebook.pages.Given;
import rimebook.pages.RinkClock;
import rimebook.panels.Panels;
import rimebook.panels.SeatGuesses;
import rimebook.panels.SeatId;
import rimebook.panels.SeatTakeoverQuestions;
import rimebook.panels.SeatView;
import rimebook.performances.AbsentJudges;
import rimebook.performances.PanelChanges;
import rimebook.performances.PerformanceId;
import rimebook.shared.Required;
import rimebook.stand.StandView;
import rimebook.wording.Sentence;

/** The forms of the stand about cards that are closed and seats that are not filled. */
@Component
class StandForms {

	static final String REOPEN = "reopen";

	static final String TAKEOVER = "takeover";

	static final String TAKE_BACK = "takeBack";

	static final String ABSENT = "absent";

	private final PanelChanges changes;

	private final SeatGuesses guesses;

	private final SeatTakeoverQuestions questions;

	private final Panels panels;

	StandForms(PanelChanges changes, SeatGuesses guesses, SeatTakeoverQuestions questions, Panels panels) {
		this.panels = panels;
		this.changes = changes;
		this.guesses = guesses;
		this.questions = questions;
	}

	GuessesPart guesses(StandView view, RinkClock clock) {
		return GuessesPart.of(view.event().id(), this.guesses.recent(), this.questions.ofEvent(view.event().id()),
				clock);
	}

	BoundPart bound(StandView view) {
		return BoundPart.of(view.event().id(), this.panels.conflicts(view.event().id()));
	}

	PanelPart part(StandView view, RinkClock clock) {
		return PanelPart.of(this.changes.ofSegment(view.segment().id()), clock);
	}

	/** Put them into the page; one that is in the model already stays as it was typed. */
	void into(StandView view, Model model) {
		PanelChanges.SegmentPanel panel = this.changes.ofSegment(view.segment().id());
		StandView.Row lastClosed = (view.reopened() == null) ? view.lastClosed() : null;
		StandView.Row toClose = toClose(view);
		model.addAttribute("lastClosed", lastClosed);
		model.addAttribute("toClose", toClose);
		model.addAttribute("segmentPanel", panel);
		model.addAttribute("counting", panel.counting().stream().map(StandForms::choice).toList());
		model.addAttribute("judges", panel.judges().stream().map(StandForms::choice).toList());
		model.addAttribute("takenBack",
				panel.changes()
					.stream()
					.filter((change) -> change.canTakeBack() || change.byRule())
					.map((change) -> Choice.of(change.seat(), change.words().english()))
					.toList());
		form(REOPEN, ReopenForm.about(lastClosed), model);
		form(TAKEOVER, TakeoverForm.EMPTY, model);
		form(TAKE_BACK, TakeBackForm.EMPTY, model);
		form(ABSENT, AbsentForm.about(toClose), model);
	}

	private static StandView.@Nullable Row toClose(StandView view) {
		StandView.Now open = (view.reopened() != null) ? view.reopened() : view.now();
		return (open != null) ? open.row() : null;
	}

	private static void form(String name, Object form, Model model) {
		if (!model.containsAttribute(name)) {
			model.addAttribute(name, form);
		}
	}

	private static Choice choice(SeatView seat) {
		return Choice.of(seat.id(), seat.label() + ((seat.official() != null) ? ", " + seat.official().name() : ""));
	}

	/** A substitute's taking over of a judge's seat, as it is typed. */
	record TakeoverForm(@Nullable String judge, @Nullable String takeoverReason) {

		static final TakeoverForm EMPTY = new TakeoverForm("", "");

		SeatId judgeGiven() {
			return Given.read("judge", this.judge, SeatId::of, Sentence.of("stand.seat-missing"));
		}

		String reasonGiven() {
			return Required.text("takeoverReason", Given.text(this.takeoverReason), 500);
		}

	}

	/** The opening of closed cards again, as it is typed. */
	record ReopenForm(@Nullable String performance, @Nullable String version, @Nullable String reopenReason) {

		static ReopenForm about(StandView.@Nullable Row row) {
			return (row == null) ? new ReopenForm("", "", "") : new ReopenForm(row.performance().id().toString(),
					String.valueOf(row.performance().version()), "");
		}

		PerformanceId performanceGiven() {
			return Given.read("performance", this.performance, PerformanceId::of,
					Sentence.of("stand.reopened-missing"));
		}

		int versionSeen() {
			return Given.read("version", this.version, Integer::valueOf, Sentence.of("stand.open-again"));
		}

		String reasonGiven() {
			return Required.text("reopenReason", Given.text(this.reopenReason), 500);
		}

	}

	/** The taking back of what was decided about a judge's seat, as it is typed. */
	record TakeBackForm(@Nullable String decided, @Nullable String takeBackRule, @Nullable String takeBackReason) {

		static final TakeBackForm EMPTY = new TakeBackForm("", "", "");

		SeatId seatGiven() {
			return Given.read("decided", this.decided, SeatId::of, Sentence.of("stand.change-missing"));
		}

		/** The rule by which a judge returns; empty where none is needed. */
		String ruleGiven() {
			return Given.text(this.takeBackRule);
		}

		String reasonGiven() {
			return Required.text("takeBackReason", Given.text(this.takeBackReason), 500);
		}

	}

	/** The closing of cards without an absent judge's, as it is typed. */
	record AbsentForm(@Nullable String performance, @Nullable String version, @Nullable List<String> absent,
			@Nullable String absentRule, @Nullable String absentReason) {

		static AbsentForm about(StandView.@Nullable Row row) {
			return (row == null) ? new AbsentForm("", "", List.of(), "", "") : new AbsentForm(
					row.performance().id().toString(), String.valueOf(row.performance().version()), List.of(), "", "");
		}

		AbsentJudges.CloseWithout given() {
			PerformanceId about = Given.read("performance", this.performance, PerformanceId::of,
					Sentence.of("stand.closed-missing"));
			int seen = Given.read("version", this.version, Integer::valueOf, Sentence.of("stand.open-again"));
			return new AbsentJudges.CloseWithout(about, seen, seats(),
					Required.text("absentRule", Given.text(this.absentRule), 120),
					Required.text("absentReason", Given.text(this.absentReason), 500));
		}

		private Set<SeatId> seats() {
			Set<SeatId> seats = new LinkedHashSet<>();
			Objects.requireNonNullElse(this.absent, List.<String>of())
				.forEach((seat) -> seats
					.add(Given.read("absent", seat, SeatId::of, Sentence.of("stand.absent-missing"))));
			return seats;
		}

		/** Tell whether a seat is ticked. */
		public boolean names(SeatId seat) {
			return this.absent != null && this.absent.contains(seat.toString());
		}

	}

}
