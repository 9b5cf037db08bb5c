package rimebook.competition.web;

import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.Stream;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

import rimebook.competition.DraftEvent;
import rimebook.competition.EventView;
import rimebook.competition.JudgingMethod;
import rimebook.competition.JudgingPolicies;
import rimebook.tabulation.SegmentKind;

/**
 * What is typed about an event.
 *
 * @param points one of those of {@link PointsOffer}, empty for none
 */
record EventForm(
		@NotBlank(message = "{competition.event.name.missing}") @Size(max = 120,
				message = "{competition.event.name.long}") String name,
		@NotNull(message = "{competition.event.method.missing}") JudgingMethod method, @Nullable String judges,
		@Size(max = 500, message = "{competition.event.reason.long}") @Nullable String evenPanelReason,
		@Nullable PoliciesForm rules, @Nullable String points, @Nullable SegmentForm first,
		@Nullable SegmentForm second, @Nullable SegmentForm third, @Nullable Boolean signatureWaits,
		@Nullable Integer version) {

	EventForm {
		signatureWaits = Boolean.TRUE.equals(signatureWaits);
	}

	@Override
	public PoliciesForm rules() {
		return (this.rules != null) ? this.rules : PoliciesForm.of(JudgingPolicies.usual());
	}

	@Override
	public SegmentForm first() {
		return (this.first != null) ? this.first : SegmentForm.none();
	}

	@Override
	public SegmentForm second() {
		return (this.second != null) ? this.second : SegmentForm.none();
	}

	@Override
	public SegmentForm third() {
		return (this.third != null) ? this.third : SegmentForm.none();
	}

	@Override
	public Integer version() {
		return (this.version != null) ? this.version : 0;
	}

	static EventForm empty() {
		return new EventForm("", JudgingMethod.MAJORITY, "7", "", null, "", SegmentForm.usual(SegmentKind.SHORT),
				SegmentForm.usual(SegmentKind.FREE), null, true, 0);
	}

	static EventForm of(EventView view) {
		List<SegmentForm> segments = view.segments().stream().map(SegmentForm::of).toList();
		return new EventForm(view.name(), view.judging().method(), String.valueOf(view.judging().judges()),
				view.judging().evenPanelReason(), PoliciesForm.of(view.judging().policies()),
				PointsOffer.value(view.judging().points()), at(segments, 0), at(segments, 1), at(segments, 2),
				view.judging().signatureWaits(), view.version());
	}

	private static @Nullable SegmentForm at(List<SegmentForm> segments, int index) {
		return (index < segments.size()) ? segments.get(index) : null;
	}

	/** Say beside each field what is wrong with it. */
	void check(Errors errors) {
		if (JudgingMethod.POINTS.equals(this.method)) {
			checkPointsPanel(errors);
		}
		else {
			checkJudges(errors);
		}
		if (segments().findAny().isEmpty()) {
			errors.rejectValue("first.name", "competition.segment.none");
		}
		check("first", first(), errors);
		check("second", second(), errors);
		check("third", third(), errors);
	}

	private void checkJudges(Errors errors) {
		OptionalInt typed = judgesTyped();
		if (typed.isEmpty() || typed.getAsInt() < 1 || typed.getAsInt() > 15) {
			errors.rejectValue("judges", "competition.event.judges.wrong");
		}
		else if (typed.getAsInt() % 2 == 0 && (this.evenPanelReason == null || this.evenPanelReason.isBlank())) {
			errors.rejectValue("judges", "competition.event.judges.even");
		}
	}

	private void checkPointsPanel(Errors errors) {
		OptionalInt typed = judgesTyped();
		if (typed.isEmpty() || typed.getAsInt() < 3 || typed.getAsInt() > 9) {
			errors.rejectValue("judges", "competition.event.judges.points");
		}
		if (PointsOffer.read(this.points).isEmpty()) {
			errors.rejectValue("points", "competition.event.points.missing");
		}
	}

	private static void check(String path, SegmentForm segment, Errors errors) {
		if (segment.isThere()) {
			errors.pushNestedPath(path);
			segment.check(errors);
			errors.popNestedPath();
		}
	}

	DraftEvent draft() {
		return new DraftEvent(this.name,
				new DraftEvent.Judging(this.method, judgesTyped().orElseThrow(),
						Objects.requireNonNullElse(this.evenPanelReason, ""), rules().policies(),
						PointsOffer.read(this.points).orElse(null), Boolean.TRUE.equals(this.signatureWaits)),
				segments().map(SegmentForm::draft).toList());
	}

	/** Tell whether the rule set needs to be looked at, since it is not the usual one. */
	public boolean isUnusual() {
		return !rules().policies().equals(JudgingPolicies.usual());
	}

	private Stream<SegmentForm> segments() {
		return Stream.of(first(), second(), third()).filter(SegmentForm::isThere);
	}

	private OptionalInt judgesTyped() {
		return Typed.number(Objects.requireNonNullElse(this.judges, ""));
	}

}
