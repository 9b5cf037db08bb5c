package rimebook.accounts;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Base64;

import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.event.ApplicationStartedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/**
 * Signs what the crew shows at the door, so that a stranger's invention is told from it
 * at once, before anything is asked of the database. A genuine sign lets nobody in; it
 * only decides whose places a request takes while it waits. All nodes share one key (HMAC
 * with SHA-256, RFC 2104), which is made at the first start and then kept.
 */
@Service
public class CrewSigns {

	/** Signs that end begin with it; no token does. */
	private static final String UNTIL = "until:";

	/** Longer than any sign. */
	private static final int LONGEST = 200;

	private static final String ALGORITHM = "HmacSHA256";

	private final JdbcClient database;

	private final SecretTokens tokens;

	private final Clock clock;

	private volatile @Nullable String secret;

	CrewSigns(JdbcClient database, SecretTokens tokens, Clock clock) {
		this.database = database;
		this.tokens = tokens;
		this.clock = clock;
	}

	/** A sign that is genuine until then. */
	public String until(Instant end) {
		return signed(UNTIL + end.getEpochSecond());
	}

	/** The token with its signature behind it: genuine for as long as the key is. */
	String signed(String token) {
		return token + "." + signature(token);
	}

	/** What nobody without the key can make from the text, always the same. */
	String secretOf(String text) {
		return signature("secret:" + text);
	}

	/** Tell whether this service made the sign, and it has not ended. */
	public boolean isGenuine(String sign) {
		int dot = sign.lastIndexOf('.');
		if (dot < 0 || sign.length() > LONGEST) {
			return false;
		}
		String token = sign.substring(0, dot);
		return MessageDigest.isEqual(signature(token).getBytes(StandardCharsets.UTF_8),
				sign.substring(dot + 1).getBytes(StandardCharsets.UTF_8)) && !hasEnded(token);
	}

	private boolean hasEnded(String token) {
		return token.startsWith(UNTIL) && !this.clock.instant()
			.isBefore(Instant.ofEpochSecond(Long.parseLong(token.substring(UNTIL.length()))));
	}

	private String signature(String token) {
		try {
			Mac mac = Mac.getInstance(ALGORITHM);
			mac.init(new SecretKeySpec(key().getBytes(StandardCharsets.UTF_8), ALGORITHM));
			return Base64.getUrlEncoder()
				.withoutPadding()
				.encodeToString(mac.doFinal(token.getBytes(StandardCharsets.UTF_8)));
		}
		catch (GeneralSecurityException ex) {
			throw new IllegalStateException("Every Java platform has " + ALGORITHM, ex);
		}
	}

	/** At the start, so that nobody at the door ever waits for it. */
	@EventListener(ApplicationStartedEvent.class)
	void learnTheKey() {
		key();
	}

	private String key() {
		String known = this.secret;
		return (known != null) ? known : keptKey();
	}

	private synchronized String keptKey() {
		String kept = find();
		if (kept == null) {
			make();
			kept = find();
		}
		if (kept == null) {
			throw new IllegalStateException("The key of the crew's signs could not be kept");
		}
		this.secret = kept;
		return kept;
	}

	private @Nullable String find() {
		return this.database.sql("select secret from crew_key where id = 1")
			.query(String.class)
			.optional()
			.orElse(null);
	}

	private void make() {
		try {
			this.database.sql("insert into crew_key (id, secret, made_at) values (1, :secret, :now)")
				.param("secret", this.tokens.token())
				.param("now", this.clock.instant().atOffset(ZoneOffset.UTC))
				.update();
		}
		catch (DuplicateKeyException ex) {
			// Another node was first; its key is the one.
		}
	}

}
