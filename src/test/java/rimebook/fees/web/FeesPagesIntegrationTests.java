package rimebook.fees.web;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.testsupport.Crew;
import rimebook.testsupport.PaperStandards;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

@WholeApplication
class FeesPagesIntegrationTests {

	private static final Map<String, String> RULES = Map.of("currency", "eur", "perTeam", "220", "perSkater", "6,50",
			"lateSurcharge", "60", "lateAfter", "2199-01-31T23:59:59", "allBackUntil", "2199-02-01T18:00", "shareBack",
			"50", "shareUntil", "2199-02-28T18:00:30");

	@Autowired
	private ApplicationContext context;

	private SmallCompetition small;

	private String door;

	private String account;

	private Visitor secretary;

	@BeforeEach
	void twoClubs() {
		this.small = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 2,
				CompetitionFixtures.anEvent("Junior", 3));
		this.door = "/desk/fees/" + this.small.competition().id();
		this.account = this.door + "/club/" + this.small.entries().get(0).team().club().id();
		this.secretary = Crew.visitor(this.context, Role.SECRETARY);
	}

	@Test
	void feesAreSetForTheCompetitionAndForAnEvent() {
		assertThat(this.secretary.open(this.door).text()).contains("Nothing is charged yet.");
		assertThat(this.secretary.open(this.account).status()).isEqualTo(404);
		Visitor.Page set = rules(RULES);
		assertThat(set.text()).contains("What is charged is kept", "440.00 EUR are open with 2 clubs", "Club 1");
		Visitor.Page again = this.secretary.open(this.door + "/rules");
		assertThat(again.document().select("form.sheet input").eachAttr("value")).contains("EUR", "220.00", "6.50",
				"60.00", "2199-01-31T23:59:59", "2199-02-01T18:00", "50", "2199-02-28T18:00:30");
		Visitor.Page event = this.secretary.open("/desk/fees/event/" + this.small.event().id())
			.submit("form.sheet", Map.of("perTeam", "100", "lateSurcharge", "0"));
		assertThat(event.text()).contains("What is charged is kept", "fees of its own");
		assertThat(this.secretary.open(this.door).text()).contains("200.00 EUR are open with 2 clubs");
	}

	@Test
	void nonsenseIsSaidBesideItsFieldAndWhatWasTypedStays() {
		Visitor.Page page = rules(Map.of("currency", "gold", "perTeam", "220"));
		assertThat(page.status()).isEqualTo(422);
		assertThat(page.text()).contains("“Currency” is no currency");
		assertThat(page.document().selectFirst("#perTeam").attr("value")).isEqualTo("220");
		assertThat(rules(with("perTeam", "12.345")).text()).contains("“For the team” is no amount in EUR");
		assertThat(rules(with("perSkater", "-5")).text()).contains("“For each skater” is no amount in EUR");
		assertThat(rules(with("lateAfter", "tomorrow")).text()).contains("“In time until” is no day and time");
		assertThat(rules(with("shareBack", "100")).text()).contains("“Share that comes back then”");
		assertThat(rules(with("shareBack", "half")).text()).contains("“Share that comes back then” is no whole number");
		assertThat(rules(with("shareUntil", "")).text()).contains("“The share comes back until” is empty");
		assertThat(rules(with("shareUntil", "2199-02-01T18:00")).text()).contains("has to be later than the time");
		assertThat(this.secretary.open(this.door).text()).contains("Nothing is charged yet.");
	}

	@Test
	void moneyIsTakenWaivedGivenBackAndTakenBack() {
		rules(RULES);
		Visitor.Page payment = this.secretary.open(this.account + "/payment");
		assertThat(payment.document().selectFirst("#amount").attr("value")).isEqualTo("220.00");
		Visitor.Page second = this.secretary.open(this.account + "/payment");
		Visitor.Page paid = payment.submit("form.sheet", Map.of("amount", "300", "why", "bank transfer"));
		assertThat(paid.text()).contains("The payment is written down.", "Paid too much 80.00 EUR", "bank transfer");
		Visitor.Page stale = second.submit("form.sheet", Map.of("amount", "300,00", "why", "the same transfer"));
		assertThat(stale.status()).isEqualTo(422);
		assertThat(stale.text()).contains("Somebody else changed this account", "Paid too much 80.00 EUR");
		assertThat(stale.document().selectFirst("#why").attr("value")).isEqualTo("the same transfer");
		Visitor.Page waiver = this.secretary.open(this.account + "/waiver")
			.submit("form.sheet", Map.of("amount", "20", "why", "Helped at the rink."));
		assertThat(waiver.text()).contains("The waiver is written down.", "Paid too much 100.00 EUR");
		assertThat(this.secretary.open(this.account + "/waiver")
			.submit("form.sheet", Map.of("amount", "200.01", "why", "More."))
			.text()).contains("is more than can be waived of what the team owes: 200.00 EUR");
		Visitor.Page refund = this.secretary.open(this.account + "/refund");
		assertThat(refund.document().selectFirst("#amount").attr("value")).isEqualTo("100.00");
		assertThat(refund.submit("form.sheet", Map.of("amount", "", "why", "x")).text()).contains("“Amount” is empty");
		Visitor.Page given = this.secretary.open(this.account + "/refund")
			.submit("form.sheet", Map.of("why", "Paid too much."));
		assertThat(given.text()).contains("What was given back is written down.", "Open 0.00 EUR")
			.doesNotContain("Paid too much 1");
		String booking = given.document().select("a[href*='/booking/']").last().attr("href");
		assertThat(this.secretary.open(booking).submit("form.sheet", Map.of("why", "")).text())
			.contains("“Why” is empty");
		Visitor.Page back = this.secretary.open(booking).submit("form.sheet", Map.of("why", "A slip."));
		assertThat(back.text()).contains("It is taken back by a further row.", "takes back No. 4",
				"Paid too much 100.00 EUR");
	}

	@Test
	void theStatementIsADocumentThatLastsAndATable() {
		rules(RULES);
		this.secretary.open(this.account + "/payment").submit("form.sheet", Map.of("amount", "1", "why", "cash"));
		HttpResponse<byte[]> pdf = this.secretary.bytes(this.account + "/statement.pdf");
		assertThat(pdf.headers().firstValue("Content-Type")).contains("application/pdf");
		assertThat(PaperStandards.faults(pdf.body())).isEmpty();
		HttpResponse<byte[]> csv = this.secretary.bytes(this.account + "/statement.csv");
		assertThat(csv.headers().firstValue("Content-Disposition").orElseThrow()).startsWith("attachment;")
			.contains("-statement-Club-1.csv");
		assertThat(new String(csv.body(), StandardCharsets.UTF_8)).contains("paid,,,1.00,EUR,cash",
				"open,,,219.00,EUR,");
	}

	@Test
	void theSecretaryWritesAndTheAccountantReads() {
		rules(RULES);
		for (Role role : new Role[] { Role.ACCOUNTANT, Role.ADMINISTRATOR }) {
			Visitor reader = Crew.visitor(this.context, role);
			assertThat(reader.open(this.door).text()).contains("440.00 EUR are open");
			Visitor.Page page = reader.open(this.account);
			assertThat(page.text()).contains("the team 220.00 EUR").doesNotContain("Take a payment");
			assertThat(reader.open(this.account + "/payment").submit("form.sheet", Map.of("why", "cash")).status())
				.as("%s", role)
				.isEqualTo(403);
		}
		assertThat(Crew.visitor(this.context, Role.ANNOUNCER).open(this.door).status()).isEqualTo(403);
	}

	private static Map<String, String> with(String field, String typed) {
		Map<String, String> rules = new HashMap<>(RULES);
		rules.put(field, typed);
		return rules;
	}

	private Visitor.Page rules(Map<String, String> typed) {
		return this.secretary.open(this.door + "/rules").submit("form.sheet", typed);
	}

}
