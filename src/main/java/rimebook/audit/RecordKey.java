package rimebook.audit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.time.Instant;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The pair of keys by which anchors are signed: Ed25519 in a file of two PEM blocks,
 * {@code PRIVATE KEY} (PKCS 8) and {@code PUBLIC KEY}. The file lies where the database
 * does not.
 */
final class RecordKey {

	private static final String ALGORITHM = "Ed25519";

	private final PrivateKey secret;

	private final PublicKey open;

	private RecordKey(PrivateKey secret, PublicKey open) {
		this.secret = secret;
		this.open = open;
	}

	/** Make a new pair. */
	static RecordKey make() {
		try {
			KeyPair pair = KeyPairGenerator.getInstance(ALGORITHM).generateKeyPair();
			return new RecordKey(pair.getPrivate(), pair.getPublic());
		}
		catch (GeneralSecurityException ex) {
			throw new IllegalStateException("Every Java platform has Ed25519", ex);
		}
	}

	/**
	 * Read the file and try whether both keys belong together.
	 * @throws IOException if there is no such file, or it holds something else
	 */
	static RecordKey read(Path file) throws IOException {
		String text = Files.readString(file, StandardCharsets.US_ASCII);
		try {
			RecordKey key = new RecordKey(
					KeyFactory.getInstance(ALGORITHM).generatePrivate(new PKCS8EncodedKeySpec(block(text, "PRIVATE"))),
					publicKey(text));
			Anchor trial = Anchor.of(1, ChainDigest.START, Instant.EPOCH);
			if (!isSignedBy(key.open, key.sign(trial))) {
				throw new IOException("its private and its public key do not belong together");
			}
			return key;
		}
		catch (GeneralSecurityException ex) {
			throw new IOException("it holds no Ed25519 key", ex);
		}
	}

	/**
	 * Read a public key.
	 * @throws IOException if the text holds none
	 */
	static PublicKey publicKey(String text) throws IOException {
		try {
			return KeyFactory.getInstance(ALGORITHM).generatePublic(new X509EncodedKeySpec(block(text, "PUBLIC")));
		}
		catch (GeneralSecurityException ex) {
			throw new IOException("it holds no Ed25519 key", ex);
		}
	}

	private static byte[] block(String text, String kind) throws IOException {
		Matcher found = Pattern
			.compile("-----BEGIN " + kind + " KEY-----([A-Za-z0-9+/=\\s]+)-----END " + kind + " KEY-----")
			.matcher(text);
		if (!found.find()) {
			throw new IOException("it has no block \"" + kind + " KEY\"");
		}
		return Base64.getMimeDecoder().decode(found.group(1));
	}

	/** The anchor with its signature; the same each time. */
	Anchor sign(Anchor anchor) {
		try {
			Signature signature = Signature.getInstance(ALGORITHM);
			signature.initSign(this.secret);
			signature.update(anchor.statementBytes());
			return anchor.signed(Base64.getUrlEncoder().withoutPadding().encodeToString(signature.sign()));
		}
		catch (GeneralSecurityException ex) {
			throw new IllegalStateException("The key signed when it was read", ex);
		}
	}

	/** Tell whether the anchor has a signature of that key. */
	static boolean isSignedBy(PublicKey key, Anchor anchor) {
		try {
			Signature signature = Signature.getInstance(ALGORITHM);
			signature.initVerify(key);
			signature.update(anchor.statementBytes());
			return anchor.isSigned() && signature.verify(Base64.getUrlDecoder().decode(anchor.signature()));
		}
		catch (GeneralSecurityException | IllegalArgumentException ex) {
			return false;
		}
	}

	/** The public key as a PEM block, to be handed out. */
	String publicPem() {
		return pem("PUBLIC", this.open.getEncoded());
	}

	/** Both keys, for the file that only the service reads. */
	String bothPem() {
		return pem("PRIVATE", this.secret.getEncoded()) + publicPem();
	}

	private static String pem(String kind, byte[] encoded) {
		return "-----BEGIN " + kind + " KEY-----\n"
				+ Base64.getMimeEncoder(64, new byte[] { '\n' }).encodeToString(encoded) + "\n-----END " + kind
				+ " KEY-----\n";
	}

}
