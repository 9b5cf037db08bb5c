package rimebook.live;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.bean.override.mockito.MockReset;
import org.springframework.test.context.bean.override.mockito.MockitoBean;

import rimebook.competition.Competitions;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.Entries;
import rimebook.results.Standings;

/** A test of the whole running house whose public side reads from a {@link Stage}. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
		properties = { "spring.datasource.url=jdbc:h2:mem:live", "rimebook.live.heartbeat=300ms",
				"rimebook.live.quiet=3s", "rimebook.live.poll=1s", "rimebook.live.streams=20",
				"rimebook.live.streams-per-address=20" })
@MockitoBean(types = { Competitions.class, Entries.class, StartingOrderDraw.class, Standings.class },
		reset = MockReset.NONE)
@Import(Visitor.class)
@interface LiveTest {

}
