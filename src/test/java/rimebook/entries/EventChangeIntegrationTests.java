package rimebook.entries;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.audit.RecordVerification;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.EventId;
import rimebook.performances.SegmentRun;
import rimebook.rosters.DraftSkater;
import rimebook.rosters.PlaceRole;
import rimebook.rosters.Rosters;
import rimebook.shared.RimebookException;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.StoredFindings;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** A team that was entered into the wrong event. */
@WholeApplication
class EventChangeIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Entries entries;

	@Autowired
	private EventChange changes;

	@Autowired
	private RecordVerification record;

	private SmallCompetition junior;

	private SmallCompetition senior;

	private EntryView entry;

	private StoredFindings stored;

	@BeforeEach
	void runTwoEvents() {
		this.stored = StoredFindings.since(this.record);
		List<SmallCompetition> both = SmallCompetition.running(this.context, 2,
				List.of(CompetitionFixtures.anEvent("Junior", 3), CompetitionFixtures.anEvent("Senior", 3)));
		this.junior = both.get(0);
		this.senior = both.get(1);
		this.entry = this.junior.entries().get(0);
	}

	@Test
	void beforeTheDrawTheEntryGoesOverWithItsRosterAndBack() {
		Rosters rosters = this.context.getBean(Rosters.class);
		rosters.addNew(this.entry.id(),
				new DraftSkater("Aila", "Firn " + UUID.randomUUID().toString().replaceAll("[^a-f]", ""),
						LocalDate.of(2011, 3, 9), "", this.entry.team().club().id()),
				PlaceRole.SKATES, false, "The roster came late.", SmallCompetition.REFEREE);
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		Visitor.Page page = secretary.open("/desk/entries/entry/" + this.entry.id() + "/event");
		assertThat(page.document().select("select[name=event] option").eachText()).containsExactly("Senior");
		Visitor.Page unsaid = page.submit("form.sheet", Map.of());
		assertThat(unsaid.status()).isEqualTo(422);
		assertThat(unsaid.text()).contains("needs a reason");
		Visitor.Page moved = page.submit("form.sheet", Map.of("lateReason", "Too old for Junior."));
		assertThat(moved.path()).isEqualTo("/desk/entries/" + this.senior.event().id());
		assertThat(this.junior.entries()).hasSize(1);
		EntryView there = this.entries.entry(this.entry.id());
		assertThat(there.event()).isEqualTo(this.senior.event().id());
		assertThat(there.acceptance()).isEqualTo(this.entry.acceptance());
		assertThat(rosters.of(there.id()).onIce()).hasSize(1);
		assertThat(page.submit("form.sheet", Map.of("lateReason", "Twice.")).text())
			.contains("Somebody else changed this entry");
		assertRefused("late-reason-missing", () -> move(there, this.junior.event().id(), ""));
		assertThat(this.stored.found()).isEmpty();
	}

	@Test
	void itIsTakenBackByTheSameAct() {
		EntryView there = move(this.entry, this.senior.event().id(), "Too old for Junior.");
		EntryView back = move(there, this.junior.event().id(), "Looked at the wrong year.");
		assertThat(back.event()).isEqualTo(this.entry.event());
		assertThat(this.junior.entries()).hasSize(2);
		assertThat(this.senior.entries()).hasSize(2);
	}

	@Test
	void afterTheDrawItsNumberStaysEmptyAndItIsEnteredAnew() {
		this.junior.draw(1);
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		Visitor.Page page = secretary.open("/desk/entries/entry/" + this.entry.id() + "/event");
		assertThat(page.text()).contains("was drawn for Short programme, where its number stays",
				"entered into the " + "other event anew");
		Visitor.Page moved = page.submit("form.sheet", Map.of("lateReason", "Too old for Junior."));
		assertThat(moved.status()).isEqualTo(200);
		assertThat(this.entries.entry(this.entry.id()).withdrawal()).isNotNull();
		assertThat(this.senior.entries()).hasSize(3)
			.filteredOn((one) -> one.team().equals(this.entry.team()))
			.singleElement()
			.satisfies((fresh) -> assertThat(fresh.isLate()).isTrue());
		this.context.getBean(SegmentRun.class).open(this.junior.segment(1), SmallCompetition.REFEREE);
		this.junior.skateRest(1);
		assertThat(this.stored.found()).isEmpty();
	}

	@Test
	void whereItCannotGoIsSaid() {
		EventId same = this.entry.event();
		assertRefused("event-elsewhere", () -> move(this.entry, same, "Why not."));
		SmallCompetition other = SmallCompetition.running(this.context, 1, 3);
		assertRefused("event-elsewhere", () -> move(this.entry, other.event().id(), "Why not."));
		this.entries.enter(
				new EnterTeam(this.senior.event().id(), this.entry.team().club().name(),
						this.entry.team().club().town(), this.entry.team().name(), "", "In both."),
				SmallCompetition.SECRETARY);
		assertRefused("already-entered", () -> move(this.entry, this.senior.event().id(), "Why not."));
		EntryView gone = this.entries.withdraw(this.entry.id(), this.entry.version(), "No ice.",
				SmallCompetition.SECRETARY);
		assertRefused("already-withdrawn", () -> move(gone, this.senior.event().id(), "Why not."));
	}

	private EntryView move(EntryView view, EventId event, String reason) {
		return this.changes.move(new EventChange.Move(view.id(), view.version(), event, reason),
				SmallCompetition.SECRETARY);
	}

	private static void assertRefused(String code, Runnable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.extracting(RimebookException::code)
			.isEqualTo(code);
	}

}
