package rimebook.letters;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UnsupportedEncodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.UUID;

import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import org.eclipse.angus.mail.smtp.SMTPAddressFailedException;
import org.eclipse.angus.mail.smtp.SMTPSendFailedException;
import org.eclipse.angus.mail.smtp.SMTPSenderFailedException;
import org.jspecify.annotations.Nullable;
import org.springframework.mail.MailAuthenticationException;
import org.springframework.mail.MailException;
import org.springframework.mail.MailSendException;
import org.springframework.mail.javamail.JavaMailSenderImpl;
import org.springframework.mail.javamail.MimeMessageHelper;

/**
 * Hands letters to the mail server, and says of each how that went. Holds no connection
 * to the database meanwhile.
 */
class Carrier {

	/** Answers from here on are for good. */
	private static final int REFUSED_FOR_GOOD = 500;

	private static final String PART = "[^\\s\\p{Cntrl}@<>,;:()\"]+";

	private final @Nullable JavaMailSenderImpl server;

	private final InternetAddress sender;

	private final String replyTo;

	/**
	 * @param server {@code null} where none is set
	 * @param sender an address of electronic mail
	 * @param replyTo the same, or empty
	 */
	Carrier(@Nullable JavaMailSenderImpl server, String sender, String replyTo) {
		this.server = server;
		this.replyTo = replyTo;
		this.sender = (server != null) ? address(sender) : new InternetAddress();
	}

	private static InternetAddress address(String sender) {
		try {
			return new InternetAddress(sender, true);
		}
		catch (MessagingException ex) {
			throw new IllegalArgumentException(
					"rimebook.letters.sender has to be an address of electronic mail, not '" + sender + "'", ex);
		}
	}

	/** Tell whether there is a server at all. */
	boolean isThere() {
		return this.server != null;
	}

	/** From whom letters come. */
	String from() {
		return this.sender.getAddress();
	}

	/** Hand a letter over. */
	Outcome carry(LetterQueue.Claimed letter) {
		if (this.server == null) {
			return new Outcome(Ending.UNREACHABLE, "There is no mail server.");
		}
		Spoken message = new Spoken(this.server.getSession());
		try {
			fill(message, letter);
			this.server.send(message);
			return new Outcome(Ending.SENT, "");
		}
		catch (MailSendException ex) {
			return of(ex, message.wasSpoken());
		}
		catch (MailAuthenticationException ex) {
			return new Outcome(Ending.UNREACHABLE, words(ex));
		}
		catch (MailException ex) {
			return new Outcome(Ending.FAILED, words(ex));
		}
		catch (MessagingException | UnsupportedEncodingException ex) {
			return new Outcome(Ending.REFUSED, words(ex));
		}
	}

	private void fill(MimeMessage message, LetterQueue.Claimed letter)
			throws MessagingException, UnsupportedEncodingException {
		MimeMessageHelper mail = new MimeMessageHelper(message, StandardCharsets.UTF_8.name());
		InternetAddress to = recipient(letter.to().mail());
		if (!letter.to().name().isEmpty()) {
			to.setPersonal(oneLine(letter.to().name()), StandardCharsets.UTF_8.name());
		}
		mail.setFrom(this.sender);
		mail.setTo(to);
		if (!this.replyTo.isEmpty()) {
			mail.setReplyTo(this.replyTo);
		}
		mail.setSubject(oneLine(letter.content().subject()));
		mail.setText(letter.content().body());
		mail.setSentDate(new Date());
		message.setHeader("Message-ID", messageId(letter.id()));
		message.setHeader("Content-Language", letter.language().getLanguage());
	}

	/** One address and nothing else: blanks, brackets or commas would make it several. */
	private static InternetAddress recipient(String mail) throws AddressException {
		if (!mail.matches(PART + "@" + PART)) {
			throw new AddressException("This is no address of electronic mail");
		}
		return new InternetAddress(mail, true);
	}

	/** The same for every attempt, so that whoever gets it twice can know it again. */
	private String messageId(UUID letter) {
		return "<" + letter + ".letter@" + from().substring(from().lastIndexOf('@') + 1) + ">";
	}

	/** A line break would begin another header. */
	private static String oneLine(String text) {
		return text.replaceAll("\\p{Cntrl}+", " ").strip();
	}

	/**
	 * What the server refused is told apart from a server that was not reached, which
	 * answers nothing at all. Where nothing failed but saying goodbye, it went.
	 */
	private static Outcome of(MailSendException ex, boolean wasSpoken) {
		if (ex.getFailedMessages().isEmpty()) {
			return new Outcome(Ending.SENT, "");
		}
		List<Exception> all = new ArrayList<>();
		for (Exception one : ex.getMessageExceptions()) {
			addAll(all, one);
		}
		if (ex.getCause() != null && !wasSpoken && all.stream().allMatch((one) -> code(one) <= 0)) {
			return new Outcome(Ending.UNREACHABLE, words(ex));
		}
		Ending ending = all.stream().map((one) -> ending(one, wasSpoken)).reduce(Ending.FAILED, Carrier::graver);
		return new Outcome(ending, all.isEmpty() ? words(ex) : words(all.get(all.size() - 1)));
	}

	private static void addAll(List<Exception> all, @Nullable Exception first) {
		Exception one = first;
		while (one != null && !all.contains(one)) {
			all.add(one);
			one = (one instanceof MessagingException mail) ? mail.getNextException() : null;
		}
	}

	/**
	 * Where the server did not answer it has not taken the letter, unless all of it was
	 * spoken: then nobody knows.
	 */
	private static Ending ending(Exception one, boolean wasSpoken) {
		int code = code(one);
		if (code <= 0) {
			return wasSpoken ? Ending.DOUBTFUL : Ending.FAILED;
		}
		return (code >= REFUSED_FOR_GOOD) ? Ending.REFUSED : Ending.FAILED;
	}

	/** What the server answered, 0 or less for nothing. */
	private static int code(Exception one) {
		if (one instanceof SMTPSendFailedException failed) {
			return failed.getReturnCode();
		}
		if (one instanceof SMTPAddressFailedException failed) {
			return failed.getReturnCode();
		}
		return (one instanceof SMTPSenderFailedException failed) ? failed.getReturnCode() : 0;
	}

	private static Ending graver(Ending one, Ending other) {
		return (one.compareTo(other) >= 0) ? one : other;
	}

	/** What the server said, on one line. */
	private static String words(Throwable why) {
		Throwable last = why;
		while (last.getCause() != null && last.getCause() != last) {
			last = last.getCause();
		}
		String words = oneLine(String.valueOf(last.getMessage()));
		return words.isEmpty() ? last.getClass().getSimpleName() : words;
	}

	/** A letter that knows whether all of it was spoken to the server. */
	private static final class Spoken extends MimeMessage {

		private boolean spoken;

		Spoken(Session session) {
			super(session);
		}

		boolean wasSpoken() {
			return this.spoken;
		}

		@Override
		public void writeTo(OutputStream out, String[] ignoreList) throws IOException, MessagingException {
			super.writeTo(out, ignoreList);
			this.spoken = true;
		}

	}

	/** How it ended, graver things later. */
	enum Ending {

		/** The server took it. */
		SENT,

		/** It did not go and may go later. */
		FAILED,

		/** The server was not reached, so no other letter goes now. */
		UNREACHABLE,

		/** The server will never take it. */
		REFUSED,

		/** It was handed over and nothing was heard of it. */
		DOUBTFUL

	}

	/**
	 * How it went.
	 *
	 * @param words what the server said, empty where all went well
	 */
	record Outcome(Ending ending, String words) {
	}

}
