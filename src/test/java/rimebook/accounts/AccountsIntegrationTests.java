package rimebook.accounts;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;

import jakarta.persistence.EntityManager;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Each test is rolled back; they start from a house without people. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:accounts;DB_CLOSE_DELAY=-1")
@Transactional
class AccountsIntegrationTests {

	private static final Actor ADMINISTRATOR = new Actor("Ada Office", "administrator", "test");

	private static final String PASSWORD = "ice lantern rime book";

	@Autowired
	private People people;

	@Autowired
	private SetUpLink setUpLink;

	@Autowired
	private SeatCodes seatCodes;

	@Autowired
	private SeatTakeovers takeovers;

	@Autowired
	private UserDetailsService signIns;

	@Autowired
	private PasswordEncoder passwords;

	@Autowired
	private JdbcClient database;

	@Autowired
	private EntityManager entities;

	@Test
	void theFirstLinkMakesOneAdministratorOnce() {
		String token = this.setUpLink.renew().orElseThrow();
		this.setUpLink.check(token);
		PersonView first = this.setUpLink.redeem(token, draft("office", "Ada Office", Role.SECRETARY), "test");
		assertThat(first.roles()).containsExactly(Role.ADMINISTRATOR);
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(() -> this.setUpLink.redeem(token, draft("second", "Second", Role.SECRETARY), "test"))
			.satisfies((ex) -> assertThat(ex.code()).isEqualTo("set-up-link-used"));
		assertThat(this.setUpLink.renew()).isEmpty();
	}

	@Test
	void aNewLinkVoidsTheOneBefore() {
		String former = this.setUpLink.renew().orElseThrow();
		String token = this.setUpLink.renew().orElseThrow();
		assertThatExceptionOfType(NotFoundException.class).isThrownBy(() -> this.setUpLink.check(former));
		this.setUpLink.check(token);
	}

	@Test
	void aLinkIsGoodForADay() {
		String token = this.setUpLink.renew().orElseThrow();
		madeEarlierBy(Duration.ofHours(24).minusMinutes(1));
		this.setUpLink.check(token);
		madeEarlierBy(Duration.ofMinutes(1));
		refused("set-up-link-expired", () -> this.setUpLink.check(token));
		refused("set-up-link-expired",
				() -> this.setUpLink.redeem(token, draft("office", "Ada Office", Role.ADMINISTRATOR), "test"));
		this.setUpLink.check(this.setUpLink.renew().orElseThrow());
	}

	private void madeEarlierBy(Duration time) {
		SetUpTicket ticket = this.entities.find(SetUpTicket.class, SetUpTicket.ONLY);
		this.entities.flush();
		this.entities.detach(ticket);
		Instant made = this.database.sql("select made_at from set_up_link").query(Instant.class).single();
		this.database.sql("update set_up_link set made_at = :made")
			.param("made", OffsetDateTime.ofInstant(made.minus(time), ZoneOffset.UTC))
			.update();
	}

	@Test
	void neitherTokenNorPasswordIsKept() {
		String token = this.setUpLink.renew().orElseThrow();
		this.setUpLink.redeem(token, draft("office", "Ada Office", Role.ADMINISTRATOR), "test");
		String kept = this.database.sql("select token_digest from set_up_link").query(String.class).single()
				+ this.database.sql("select password_hash from person").query(String.class).single();
		assertThat(kept).doesNotContain(token, PASSWORD).contains(SecretTokens.digest(token));
	}

	@Test
	void somebodyAddedCanSignInInAnyCase() {
		this.people.add(draft(" Rune.Frost ", "Rune Frost", Role.REFEREE, Role.ACCOUNTANT), ADMINISTRATOR);
		UserDetails signedIn = this.signIns.loadUserByUsername("RUNE.frost ");
		assertThat(this.passwords.matches(PASSWORD, signedIn.getPassword())).isTrue();
		assertThat(signedIn.getAuthorities()).extracting("authority")
			.containsExactlyInAnyOrder("ROLE_REFEREE", "ROLE_ACCOUNTANT");
	}

	@Test
	void namesAreGivenOnce() {
		this.people.add(draft("rune", "Rune Frost", Role.REFEREE), ADMINISTRATOR);
		refused("sign-in-name-taken", () -> this.people.add(draft("RUNE", "Rune F.", Role.REFEREE), ADMINISTRATOR));
		refused("display-name-taken", () -> this.people.add(draft("rune2", "rune frost", Role.REFEREE), ADMINISTRATOR));
	}

	@Test
	void aStaleChangeIsRefused() {
		PersonView rune = this.people.add(draft("rune", "Rune Frost", Role.REFEREE), ADMINISTRATOR);
		PersonView changed = this.people.change(rune.id(), rune.version(), "Rune Frost", Set.of(Role.SECRETARY),
				ADMINISTRATOR);
		assertThat(changed.roles()).containsExactly(Role.SECRETARY);
		assertThat(changed.version()).isNotEqualTo(rune.version());
		refused("stale-version", () -> this.people.change(rune.id(), rune.version(), "Rune", Set.of(), ADMINISTRATOR));
	}

	@ParameterizedTest
	@ValueSource(strings = { "Rimebook", "RIMEBOOK", "\uFF32imebook", "Rimebook, by rule", "System", "nobody",
			"Judge 3, Adult" })
	void nobodyTakesTheNameOfTheService(String name) {
		assertThatExceptionOfType(RuleViolationException.class).isThrownBy(() -> draft("kai", name, Role.REFEREE))
			.satisfies((refused) -> assertThat(refused.code()).isEqualTo("name-reserved"));
		PersonView rune = this.people.add(draft("rune", "Rune Frost", Role.REFEREE), ADMINISTRATOR);
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> this.people.change(rune.id(), rune.version(), name, Set.of(), ADMINISTRATOR));
	}

	@Test
	void theLastAdministratorStays() {
		PersonView ada = this.people.add(draft("ada", "Ada Office", Role.ADMINISTRATOR), Actor.system());
		Actor self = new Actor("person:" + ada.id(), "Another Name", "administrator", "test");
		refused("own-account", () -> this.people.deactivate(ada.id(), ada.version(), self));
		Actor other = new Actor("Somebody Else", "administrator", "test");
		refused("last-administrator", () -> this.people.deactivate(ada.id(), ada.version(), other));
	}

	@Test
	void theLastAdministratorKeepsTheRole() {
		PersonView ada = this.people.add(draft("ada", "Ada Office", Role.ADMINISTRATOR), Actor.system());
		refused("last-administrator", () -> this.people.change(ada.id(), ada.version(), "Ada Office",
				EnumSet.of(Role.REFEREE), ADMINISTRATOR));
	}

	@Test
	void whoeverIsShutOutCannotSignInUntilLetIn() {
		PersonView rune = this.people.add(draft("rune", "Rune Frost", Role.REFEREE), ADMINISTRATOR);
		PersonView out = this.people.deactivate(rune.id(), rune.version(), ADMINISTRATOR);
		assertThat(this.signIns.loadUserByUsername("rune").isEnabled()).isFalse();
		this.people.reactivate(rune.id(), out.version(), ADMINISTRATOR);
		assertThat(this.signIns.loadUserByUsername("rune").isEnabled()).isTrue();
	}

	@Test
	void nobodyIsMadeAJudge() {
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> draft("rune", "Rune Frost", Role.JUDGE))
			.satisfies((ex) -> assertThat(ex.code()).isEqualTo("judge-is-a-seat"));
	}

	@Test
	void aLiveSeatIsTakenOverOnlyWithTheRefereesYes() {
		UUID seat = UUID.randomUUID();
		String code = this.seatCodes.issue(seat, "Judge 3, Adult", ADMINISTRATOR);
		String typed = " " + code.substring(0, 4).toLowerCase() + "-" + code.substring(4) + " ";
		SeatCodes.Pairing first = this.seatCodes.pair(typed, "tablet one", null);
		SeatCodes.Pairing second = this.seatCodes.pair(code, "tablet two", null);
		assertThat(second.waiting()).isTrue();
		assertThat(this.seatCodes.grantOf(first.token())).isPresent();
		assertThat(this.seatCodes.grantOf(second.token())).isEmpty();
		assertThat(this.takeovers.look(second.token())).isEqualTo(SeatTakeovers.Answer.WAITING);
		SeatTakeovers.Question question = question(seat);
		assertThat(question.device()).isEqualTo("tablet two");
		assertThat(question.holder()).isEqualTo("tablet one");
		this.takeovers.answer(seat, question.askedAt(), true, ADMINISTRATOR);
		assertThat(this.takeovers.look(second.token())).isEqualTo(SeatTakeovers.Answer.TAKEN);
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(() -> this.takeovers.answer(seat, question.askedAt(), true, ADMINISTRATOR))
			.satisfies((ex) -> assertThat(ex.code()).isEqualTo("seat-question-gone"));
		assertThat(this.seatCodes.grantOf(first.token())).isEmpty();
		assertThat(this.seatCodes.grantOf(second.token())).contains(new SeatCodes.Grant(seat, "Judge 3, Adult"));
		assertThat(access(seat).device().device()).isEqualTo("tablet two");
		assertThat(second.toString()).doesNotContain(second.token());
	}

	@Test
	void aTabletThatIsRefusedIsToldAndTheOtherKeepsTheSeat() {
		UUID seat = UUID.randomUUID();
		String code = this.seatCodes.issue(seat, "Judge 3, Adult", ADMINISTRATOR);
		SeatCodes.Pairing first = this.seatCodes.pair(code, "tablet one", null);
		SeatCodes.Pairing second = this.seatCodes.pair(code, "tablet two", null);
		this.takeovers.answer(seat, question(seat).askedAt(), false, ADMINISTRATOR);
		assertThat(this.takeovers.look(second.token())).isEqualTo(SeatTakeovers.Answer.REFUSED);
		assertThat(this.seatCodes.grantOf(first.token())).isPresent();
		assertThat(this.takeovers.open()).noneMatch((one) -> one.seat().equals(seat));
	}

	@Test
	void theSameTabletAndAQuietSeatAskNobody() {
		UUID seat = UUID.randomUUID();
		String code = this.seatCodes.issue(seat, "Judge 3, Adult", ADMINISTRATOR);
		SeatCodes.Pairing first = this.seatCodes.pair(code, "tablet one", null);
		SeatCodes.Pairing again = this.seatCodes.pair(code, "tablet one", first.seat());
		assertThat(again.waiting()).isFalse();
		SeatCodes.Pairing second = this.seatCodes.pair(code, "tablet two", null);
		silence(seat);
		assertThat(this.takeovers.look(second.token())).as("quiet while it waits")
			.isEqualTo(SeatTakeovers.Answer.TAKEN);
		silence(seat);
		assertThat(this.seatCodes.pair(code, "tablet three", null).waiting()).isFalse();
		assertThat(this.takeovers.look(second.token())).isEqualTo(SeatTakeovers.Answer.GONE);
	}

	@Test
	void aNewCodeEndsTheQuestion() {
		UUID seat = UUID.randomUUID();
		String code = this.seatCodes.issue(seat, "Judge 3, Adult", ADMINISTRATOR);
		this.seatCodes.pair(code, "tablet one", null);
		SeatCodes.Pairing second = this.seatCodes.pair(code, "tablet two", null);
		this.seatCodes.issue(seat, "Judge 3, Adult", ADMINISTRATOR);
		assertThat(this.takeovers.look(second.token())).isEqualTo(SeatTakeovers.Answer.GONE);
	}

	private SeatTakeovers.Question question(UUID seat) {
		return this.takeovers.open().stream().filter((one) -> one.seat().equals(seat)).findFirst().orElseThrow();
	}

	private void silence(UUID seat) {
		this.entities.flush();
		this.entities.createNativeQuery("update seat_code set last_heard_at = :then where seat_id = :seat")
			.setParameter("then", Instant.now().minusSeconds(61))
			.setParameter("seat", seat)
			.executeUpdate();
		this.entities.clear();
	}

	@Test
	void aNewCodeVoidsCodeAndTablet() {
		UUID seat = UUID.randomUUID();
		String former = this.seatCodes.issue(seat, "Judge 3, Adult", ADMINISTRATOR);
		SeatCodes.Pairing pairing = this.seatCodes.pair(former, "tablet", null);
		String code = this.seatCodes.issue(seat, "Judge 3, Adult", ADMINISTRATOR);
		assertThat(access(seat).shownCode()).isEqualTo(code);
		assertThat(this.seatCodes.grantOf(pairing.token())).isEmpty();
		SeatCodes.Device device = access(seat).device();
		assertThat(device).isEqualTo(new SeatCodes.Device(null, null, "", 0, false, device.issuedAt()));
		assertThat(device.issuedAt()).isNotNull();
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> this.seatCodes.pair(former, "tablet", null))
			.satisfies((ex) -> assertThat(ex.code()).isEqualTo("seat-code-unknown"))
			.satisfies((ex) -> assertThat(ex.field()).isEqualTo("code"));
	}

	private SeatCodes.Access access(UUID seat) {
		return Objects.requireNonNull(this.seatCodes.accessTo(List.of(seat)).get(seat));
	}

	@Test
	void theDatabaseItselfKeepsNamesApart() {
		this.people.add(draft("rune", "Rune Frost", Role.REFEREE), ADMINISTRATOR);
		assertThatExceptionOfType(DataIntegrityViolationException.class).isThrownBy(() -> this.database.sql("""
				insert into person (id, version, sign_in_name, display_name, password_hash, active, created_at)
				values (random_uuid(), 0, 'other', 'Rune Frost', 'x', true, current_timestamp)""").update());
	}

	private static void refused(String code, ThrowingCallable change) {
		assertThatExceptionOfType(ConflictException.class).isThrownBy(change)
			.satisfies((ex) -> assertThat(ex.code()).isEqualTo(code));
	}

	private static DraftPerson draft(String signInName, String displayName, Role... roles) {
		return new DraftPerson(signInName, displayName, Set.of(roles), PASSWORD);
	}

}
