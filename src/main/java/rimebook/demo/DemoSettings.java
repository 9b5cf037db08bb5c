package rimebook.demo;

import java.time.Duration;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * How the demonstration runs.
 *
 * @param pace time from one team's call to the next
 * @param paused whether the simulated panel waits to be started or stepped from its page
 */
@ConfigurationProperties("rimebook.demo")
record DemoSettings(@DefaultValue("20s") Duration pace, @DefaultValue("false") boolean paused) {
}
