package rimebook.rosters;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.competition.EventId;
import rimebook.rosters.eligibility.EligibilityRules;
import rimebook.shared.ConflictException;

/** What an event asks of its rosters, and until when they change freely. */
@Entity
class EventRules {

	@Id
	@Column(name = "event_id")
	private UUID event;

	@Version
	private @Nullable Integer version;

	/** The set that the figures were copied from; empty for none. */
	private String copiedFrom = "";

	private @Nullable Integer leastOnIce;

	private @Nullable Integer mostOnIce;

	private @Nullable Integer mostAlternates;

	private @Nullable Integer rosterLimit;

	private @Nullable Integer youngest;

	private @Nullable Integer oldest;

	private @Nullable Integer othersYoungest;

	private @Nullable Integer othersOldest;

	private @Nullable LocalDate cutOff;

	private int ageShare = 100;

	private boolean alternatesCount = true;

	private boolean oneTeam;

	private @Nullable Integer otherSkaters;

	private boolean membershipNumber;

	private String whenFewer = "";

	private @Nullable Instant deadline;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected EventRules() {
	}

	EventRules(EventId event) {
		this.event = event.value();
	}

	/** Put these in place of what was seen. */
	void write(EventEligibility.SetRules order) {
		ConflictException.requireSeen("eligibility", order.version(), this.version);
		EligibilityRules rules = order.rules();
		this.copiedFrom = order.copiedFrom();
		this.leastOnIce = rules.size().leastOnIce();
		this.mostOnIce = rules.size().mostOnIce();
		this.mostAlternates = rules.size().mostAlternates();
		this.rosterLimit = rules.size().rosterLimit();
		this.youngest = rules.ages().window().youngest();
		this.oldest = rules.ages().window().oldest();
		this.othersYoungest = rules.ages().others().youngest();
		this.othersOldest = rules.ages().others().oldest();
		this.cutOff = rules.ages().cutOff();
		this.ageShare = rules.ages().share();
		this.alternatesCount = rules.ages().alternatesCount();
		this.oneTeam = rules.sharing().oneTeam();
		this.otherSkaters = rules.sharing().otherSkaters();
		this.membershipNumber = rules.membershipNumber();
		this.whenFewer = order.whenFewer();
		this.deadline = order.deadline();
	}

	@Nullable Instant deadline() {
		return this.deadline;
	}

	EligibilityRules rules() {
		return new EligibilityRules(
				new EligibilityRules.Size(this.leastOnIce, this.mostOnIce, this.mostAlternates, this.rosterLimit),
				new EligibilityRules.Ages(new EligibilityRules.Window(this.youngest, this.oldest),
						new EligibilityRules.Window(this.othersYoungest, this.othersOldest), this.cutOff, this.ageShare,
						this.alternatesCount),
				new EligibilityRules.Sharing(this.oneTeam, this.otherSkaters), this.membershipNumber);
	}

	RulesView view() {
		return new RulesView(new EventId(this.event), this.copiedFrom, rules(), this.whenFewer, this.deadline,
				(this.version != null) ? this.version : RulesView.NONE);
	}

}
