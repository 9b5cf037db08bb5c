package rimebook.letters;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * What a house may set for letters by mail; which server takes them is said by
 * {@code spring.mail.*}.
 *
 * @param sender from whom they come; empty for the name by which the server is signed in
 * to
 * @param replyTo who gets the answers; empty for the sender
 */
@ConfigurationProperties("rimebook.letters")
record LetterSettings(@DefaultValue("") String sender, @DefaultValue("") String replyTo) {
}
