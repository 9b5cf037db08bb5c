package rimebook.draw.web;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.draw.DrawMethod;
import rimebook.draw.StartingOrderDraw;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/** The page of a starting order that took the place of another. */
@WholeApplication
class DrawnAgainIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Test
	void everyEarlierOrderIsThereWithWhyItWasReplaced() {
		SmallCompetition small = SmallCompetition.running(this.context, 3, 3);
		StartingOrderDraw draw = this.context.getBean(StartingOrderDraw.class);
		small.draw(1);
		for (String reason : new String[] { "A team was forgotten.", "The wrong list was read out." }) {
			draw.draw(
					new StartingOrderDraw.Order(small.segment(1), DrawMethod.WHOLE_FIELD, "seed " + reason, 4, reason),
					SmallCompetition.REFEREE);
		}
		for (Role role : new Role[] { Role.REFEREE, Role.SECRETARY, Role.ACCOUNTANT }) {
			Visitor.Page page = Crew.visitor(this.context, role).open("/desk/draw/" + small.segment(1));
			assertThat(page.status()).isEqualTo(200);
			assertThat(page.document().select("details dl.facts").eachText()).hasSize(2);
			assertThat(page.document().select("details dl.facts").get(0).text())
				.contains("Replaced because The wrong list was read out.");
			assertThat(page.document().select("details dl.facts").get(1).text())
				.contains("Replaced because A team was forgotten.");
		}
	}

}
