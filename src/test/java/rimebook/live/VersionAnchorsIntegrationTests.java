package rimebook.live;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.results.ResultVersion;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;

import static org.assertj.core.api.Assertions.assertThat;

/** What followers are shown of the record. */
@LiveTest
class VersionAnchorsIntegrationTests {

	private static final String FREE = "/follow/fjord-days/junior/free-skating";

	private static final Pattern ANCHOR = Pattern
		.compile("data-anchor=\"(line [1-9][0-9]* [0-9a-f]{64} [0-9TZ:.-]+)\"");

	@Autowired
	private Visitor visitor;

	@Autowired
	private ApplicationEventPublisher events;

	@Autowired
	private PlatformTransactionManager transactions;

	private final Stage stage = new Stage();

	@Test
	void thePageTheBoardAndTheDataOfAVersionNameItsLine() {
		ResultVersion version = this.stage.free().skate();
		tellOf(version);
		this.stage.free().call();
		this.visitor.watch(this.stage);
		String anchor = anchor(FREE);
		assertThat(anchor(FREE + "?part=live")).isEqualTo(anchor);
		assertThat(anchor(FREE + "/versions/1")).isEqualTo(anchor);
		assertThat(anchor("/follow/fjord-days/board")).isEqualTo(anchor);
		assertThat(this.visitor.get("/api/public/competitions/fjord-days/events/junior/segments/free-skating").body())
			.contains("\"anchor\":\"" + anchor + "\"", "\"digest\":\"" + anchor.split(" ")[2] + "\"");
		tellOf(version);
		this.visitor.watch(this.stage);
		assertThat(anchor(FREE)).as("a later line changes nothing").isEqualTo(anchor);
	}

	@Test
	void aVersionOfWhichNoLineTellsIsShownWithout() {
		this.stage.free().skate();
		this.stage.free().skate();
		this.visitor.watch(this.stage);
		assertThat(this.visitor.get(FREE).body()).contains("Version 2").doesNotContain("data-anchor");
	}

	@Test
	void whatABrowserSawAndWhatThatProvesIsAPageInThreeLanguages() {
		for (String language : List.of("en", "fi", "fr")) {
			assertThat(this.visitor.get("/record-seen?lang=" + language).body())
				.contains("<html", "lang=\"" + language + "\"", "id=\"seen-file\"", "/js/record-seen")
				.doesNotContain("??");
		}
		assertThat(this.visitor.get("/record-seen").body()).contains("It says nothing of the lines that came after it.",
				"only that it was not changed since");
	}

	private void tellOf(ResultVersion version) {
		new TransactionTemplate(this.transactions).executeWithoutResult((status) -> this.events
			.publishEvent(AuditedChange.of(Actor.system(), "result", version.scopeId(), "result.published")
				.to("Junior, Free, version " + version.number() + ", provisional, after 1 of 12: 1 Alder; fingerprint "
						+ version.fingerprint())));
	}

	private String anchor(String path) {
		Matcher found = ANCHOR.matcher(this.visitor.get(path).body());
		assertThat(found.find()).as(path).isTrue();
		return found.group(1);
	}

}
