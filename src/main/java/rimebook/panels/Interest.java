package rimebook.panels;

import java.time.LocalDate;
import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;

import rimebook.shared.FoldedName;
import rimebook.wording.Sentence;

@Entity
@Table(name = "official_interest")
class Interest {

	@Id
	private UUID id;

	private UUID officialId;

	@Enumerated(EnumType.STRING)
	private InterestView.Kind kind;

	private String team;

	private @Nullable LocalDate lastDay;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Interest() {
	}

	Interest(UUID id, Panels.DeclareInterest declared) {
		this.id = id;
		this.officialId = declared.official().value();
		this.kind = declared.kind();
		this.team = declared.team();
		this.lastDay = declared.lastDay();
	}

	OfficialView.Id official() {
		return new OfficialView.Id(this.officialId);
	}

	boolean bindsOn(LocalDate day) {
		return this.kind.bindsOn(day, this.lastDay);
	}

	boolean isOf(String team) {
		return FoldedName.of(this.team).isSameAs(FoldedName.of(team));
	}

	/** Tell whether the team's name may be a slip for that one. */
	boolean isNearly(String team) {
		return FoldedName.of(this.team).isNear(FoldedName.of(team));
	}

	InterestView.Kind kind() {
		return this.kind;
	}

	@Nullable LocalDate lastDay() {
		return this.lastDay;
	}

	InterestView view() {
		return new InterestView(new InterestView.Id(this.id), this.kind, this.team, this.lastDay);
	}

	/** The bond in one line: "coach or choreographer, Lanterns (until 2026-03-01)". */
	Sentence spoken() {
		return (this.lastDay != null)
				? Sentence.of("panels.bond.until", this.kind.spoken(), this.team, this.lastDay.toString())
				: Sentence.of("panels.bond", this.kind.spoken(), this.team);
	}

	/** The same in English, as on the record. */
	String inWords() {
		return spoken().english();
	}

}
