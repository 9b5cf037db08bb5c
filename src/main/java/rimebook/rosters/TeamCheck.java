package rimebook.rosters;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;
import rimebook.entries.EntryView;
import rimebook.rosters.eligibility.Finding;
import rimebook.wording.Sentence;

/**
 * How a team stands before the ice: who is on its roster, what its event's rules say
 * against it, and what is still missing.
 *
 * @param findings what the rules do not allow, waived or not
 * @param plans what of its planned elements is otherwise than asked and can still change
 */
public record TeamCheck(EntryView entry, EventView event, RulesView rules, RosterView roster, List<Checked> findings,
		List<ContactView> contacts, List<Sentence> plans) {

	public TeamCheck {
		findings = List.copyOf(findings);
		contacts = List.copyOf(contacts);
		plans = List.copyOf(plans);
	}

	/** What the rules do not allow and nobody waived. */
	public List<Checked> open() {
		return this.findings.stream().filter((checked) -> checked.waiver() == null).toList();
	}

	/** What the rules do not allow and somebody waived. */
	public List<Checked> waived() {
		return this.findings.stream().filter((checked) -> checked.waiver() != null).toList();
	}

	/** Everything that is missing, one sentence each; empty where all is well. */
	public List<Sentence> missing() {
		List<Sentence> missing = new ArrayList<>();
		if (this.roster.present().isEmpty()) {
			missing.add(Sentence.of("rosters.missing.roster"));
		}
		else {
			open().forEach((checked) -> missing.add(checked.finding().sentence()));
		}
		if (of(ContactView.Kind.MANAGER) == null && of(ContactView.Kind.COACH) == null) {
			missing.add(Sentence.of("rosters.missing.contact"));
		}
		if (of(ContactView.Kind.EMERGENCY) == null) {
			missing.add(Sentence.of("rosters.missing.emergency"));
		}
		missing.addAll(this.plans);
		return missing;
	}

	/**
	 * Whom to ask for what is missing: the manager, else a coach; {@code null} for
	 * nobody.
	 */
	public @Nullable ContactView fromWhom() {
		ContactView manager = of(ContactView.Kind.MANAGER);
		return (manager != null) ? manager : of(ContactView.Kind.COACH);
	}

	private @Nullable ContactView of(ContactView.Kind kind) {
		return this.contacts.stream().filter((contact) -> contact.kind() == kind).findFirst().orElse(null);
	}

	/**
	 * Something that a rule does not allow.
	 *
	 * @param place whose place on the roster it is about, {@code null} for the whole team
	 * @param waiver that holds for it, {@code null} for none
	 */
	public record Checked(Finding finding, RosterView.@Nullable PlaceId place, @Nullable WaiverView waiver) {
	}

}
