package rimebook.accounts;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.shared.NotFoundException;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

/** A team's link opens that team's page and is known by its digest alone. */
@WholeApplication
class TeamLinksIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private TeamLinks links;

	@Autowired
	private JdbcClient database;

	@Test
	void aLinkOpensItsEntryUntilItIsShut() throws LinkRefused {
		TeamLinks.GiveLink order = order(Instant.now().plusSeconds(3600));
		String token = this.links.give(order, SECRETARY);
		assertThat(token).hasSize(43);
		assertThat(this.links.open(token).entry()).isEqualTo(order.entry());
		assertThat(this.links.pass(token).competition()).isEqualTo(order.competition());
		assertThat(this.links.of(order.competition())).singleElement().satisfies((link) -> {
			assertThat(link.state().token()).isEqualTo(token);
			assertThat(link.state().openedAt()).isNotNull();
		});
		this.links.revoke(order.entry(), SECRETARY);
		this.links.revoke(order.entry(), SECRETARY);
		assertThat(refusal(token)).isEqualTo(LinkStanding.REVOKED);
		assertThat(this.links.of(order.competition())).singleElement()
			.satisfies((link) -> assertThat(link.state().token()).isNull());
	}

	@Test
	void aNewLinkVoidsTheOneBefore() throws LinkRefused {
		TeamLinks.GiveLink order = order(Instant.now().plusSeconds(3600));
		String first = this.links.give(order, SECRETARY);
		this.links.revoke(order.entry(), SECRETARY);
		String second = this.links.give(order, SECRETARY);
		assertThat(refusal(first)).isEqualTo(LinkStanding.UNKNOWN);
		assertThat(this.links.pass(second).entry()).isEqualTo(order.entry());
		assertThat(this.links.of(order.competition())).hasSize(1);
	}

	@Test
	void afterItsTimeItOpensNothing() {
		String token = this.links.give(order(Instant.now().minusSeconds(1)), SECRETARY);
		assertThat(refusal(token)).isEqualTo(LinkStanding.EXPIRED);
		assertThat(refusal("")).isEqualTo(LinkStanding.UNKNOWN);
		assertThatExceptionOfType(NotFoundException.class)
			.isThrownBy(() -> this.links.revoke(UUID.randomUUID(), SECRETARY));
	}

	@Test
	void noTokenIsStoredAnywhere() {
		TeamLinks.GiveLink order = order(Instant.now().plusSeconds(3600));
		String token = this.links.give(order, SECRETARY);
		assertThat(count("select count(*) from team_link where token_digest = ?", token)).isZero();
		assertThat(count("select count(*) from record_line where concat(before_text, after_text, reason) like ?",
				"%" + token + "%"))
			.isZero();
		assertThat(count("select count(*) from record_line where action = 'entry.manager-let-in' and subject_id = ?",
				order.entry().toString()))
			.isOne();
	}

	@Test
	void ofTwoWhoGiveALinkAtOnceOneComesAfter() throws Exception {
		TeamLinks.GiveLink order = order(Instant.now().plusSeconds(3600));
		this.links.give(order, SECRETARY);
		ExecutorService two = Executors.newFixedThreadPool(2);
		try {
			Callable<String> give = () -> this.links.give(order, SECRETARY);
			List<Future<String>> given = two.invokeAll(List.of(give, give));
			List<LinkStanding> standings = List.of(standing(given.get(0).get()), standing(given.get(1).get()));
			assertThat(standings).containsExactlyInAnyOrder(LinkStanding.GOOD, LinkStanding.UNKNOWN);
		}
		finally {
			two.shutdown();
		}
	}

	private TeamLinks.GiveLink order(Instant end) {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		return new TeamLinks.GiveLink(day.competition().id().value(), day.entries().get(0).id().value(), end);
	}

	private long count(String query, String value) {
		return this.database.sql(query).param(value).query(Long.class).single();
	}

	private LinkStanding standing(String token) {
		try {
			this.links.pass(token);
			return LinkStanding.GOOD;
		}
		catch (LinkRefused ex) {
			return ex.standing();
		}
	}

	private LinkStanding refusal(String token) {
		LinkStanding standing = standing(token);
		assertThat(standing).isNotEqualTo(LinkStanding.GOOD);
		return standing;
	}

}
