package rimebook.entries;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.UUID;
import java.util.random.RandomGenerator;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.shared.ConflictException;

/**
 * How a club is reached. The record attests it by a commitment alone: a digest with
 * random bytes that go with the row, so that nobody can try out numbers and addresses
 * against a line once it is deleted.
 */
@Entity
class ClubContact {

	private static final int SALT_BYTES = 16;

	@Id
	private UUID clubId;

	@Version
	private @Nullable Integer version;

	private String mail = "";

	private String phone = "";

	private String salt = "";

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected ClubContact() {
	}

	ClubContact(ClubView.Id club) {
		this.clubId = club.value();
	}

	ClubView.Id club() {
		return new ClubView.Id(this.clubId);
	}

	/** Put that in place of what was seen. */
	void set(ClubContacts.Reach reach, RandomGenerator random) {
		ConflictException.requireSeen("club-contact", reach.version(), view().version());
		this.mail = reach.mail();
		this.phone = reach.phone();
		byte[] bytes = new byte[SALT_BYTES];
		random.nextBytes(bytes);
		this.salt = HexFormat.of().formatHex(bytes);
	}

	/** What the record may say. */
	String attested() {
		try {
			byte[] digest = MessageDigest.getInstance("SHA-256")
				.digest((this.salt + "|" + this.mail + "|" + this.phone).getBytes(StandardCharsets.UTF_8));
			return "contact, commitment " + HexFormat.of().formatHex(digest);
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException(ex);
		}
	}

	ClubContacts.Reach view() {
		return new ClubContacts.Reach(this.mail, this.phone,
				(this.version != null) ? this.version : ClubContacts.Reach.NONE);
	}

}
