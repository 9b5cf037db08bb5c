package rimebook.web;

import java.time.Duration;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * How long people stay signed in.
 *
 * @param life from signing in until they have to sign in again, whatever they do
 */
@ConfigurationProperties("rimebook.sessions")
record SessionSettings(@DefaultValue("12h") Duration life) {
}
