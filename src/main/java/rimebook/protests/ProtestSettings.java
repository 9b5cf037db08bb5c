package rimebook.protests;

import java.time.Duration;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * How long after posting a protest is heard (ISU General Regulations 2012, Rule 123
 * paragraph 3). The rulebook in force decides; set what it says.
 *
 * @param conduct limit for anything but the computation
 * @param calculation limit for the computation
 */
@ConfigurationProperties("rimebook.protests")
record ProtestSettings(@DefaultValue("30m") Duration conduct, @DefaultValue("24h") Duration calculation) {
}
