package rimebook.draw;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * What a rink may set for its draws.
 *
 * @param groupMaximum the group maximum offered first. Six is from memory of the custom
 * for synchronized skating, where draw groups exist although nobody warms up together;
 * the published texts we read do not state it. The rulebook in force decides
 */
@ConfigurationProperties("rimebook.draw")
record DrawSettings(@DefaultValue("6") int groupMaximum) {

}
