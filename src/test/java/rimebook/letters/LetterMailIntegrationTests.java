package rimebook.letters;

import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

import com.icegreen.greenmail.util.GreenMail;
import jakarta.mail.Message;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import org.junit.jupiter.api.Test;

import rimebook.rosters.ContactView;
import rimebook.testsupport.AskedByThisThread;
import rimebook.testsupport.Races;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

@WholeApplication
class LetterMailIntegrationTests extends LettersDay {

	@Test
	void whoIsWrittenToIsTheManagerInTheLanguageOfTheTeam() throws Exception {
		contact(0, ContactView.Kind.COACH, "Coach Hoar", "coach@example.org");
		contact(0, ContactView.Kind.MANAGER, "Änne Größe, \"Öy\"", "manager@example.org");
		contact(0, ContactView.Kind.EMERGENCY, "Nobody Writes", "never@example.org");
		this.languages.set(this.competition, Map.of(team(0).team().id(), Locale.forLanguageTag("fi")), SECRETARY);
		mailAll(LetterKind.CONFIRMATION);
		assertThat(round(Duration.ZERO)).isEqualTo(1);
		MimeMessage message = received().get(0);
		assertThat(((InternetAddress) message.getRecipients(Message.RecipientType.TO)[0]).getPersonal())
			.isEqualTo("Änne Größe, \"Öy\"");
		assertThat(message.getSubject()).isEqualTo("Team 1 on ilmoitettu: " + this.day.competition().name());
		assertThat(body(message)).startsWith("Hei Änne Größe, \"Öy\",\n").contains("Ystävällisin terveisin");
		assertThat(message.getAllRecipients()).hasSize(1);
		assertThat(message.getHeader("From")).containsExactly("desk@rink.example");
		LetterView letter = letter();
		assertThat(message.getMessageID()).isEqualTo("<" + letter.id() + ".letter@rink.example>");
		assertThat(letter.course().state()).isEqualTo(LetterState.SENT);
		assertThat(letter.content().body()).as("kept as sent").isEqualTo(body(message).strip());
	}

	@Test
	void twoServicesSendEachLetterOnce() throws Exception {
		SmallCompetition large = SmallCompetition.running(this.context, 40, 3);
		large.entries().forEach((entry) -> contact(entry, entry.team().name(), mailOf(entry)));
		this.competition = large.competition().id();
		mailAll(LetterKind.CONFIRMATION);
		Postman one = postman(carrier(this.mail.getSmtp().getPort()), Duration.ZERO);
		Postman other = postman(carrier(this.mail.getSmtp().getPort()), Duration.ZERO);
		List<Integer> tried = Races.both(one::round, other::round);
		assertThat(tried.get(0) + tried.get(1)).isEqualTo(40);
		Set<String> ids = new HashSet<>();
		for (MimeMessage message : received()) {
			ids.add(message.getMessageID());
		}
		assertThat(received()).hasSize(40);
		assertThat(ids).hasSize(40);
	}

	@Test
	void twoHundredGoAndAreAskedForWithTheSameNumberOfQuestions() {
		SmallCompetition large = SmallCompetition.running(this.context, 200, 3);
		large.entries().forEach((entry) -> contact(entry, entry.team().name(), mailOf(entry)));
		SmallCompetition small = SmallCompetition.running(this.context, 2, 3);
		assertThat(AskedByThisThread.during(() -> preview(large, LetterKind.MISSING)))
			.hasSameSizeAs(AskedByThisThread.during(() -> preview(small, LetterKind.MISSING)));
		this.competition = large.competition().id();
		UUID sending = mailAll(LetterKind.CONFIRMATION);
		assertThat(round(Duration.ZERO)).isEqualTo(200);
		assertThat(received()).hasSize(200);
		assertThat(this.sent.sending(sending).states()).isEqualTo(Map.of(LetterState.SENT, 200));
	}

	@Test
	void aServerThatIsDownIsTriedAgainAfterAPause() {
		contact(0, ContactView.Kind.MANAGER, "Nell Thaw", "nell@example.org");
		mailAll(LetterKind.CONFIRMATION);
		int port = this.mail.getSmtp().getPort();
		this.mail.stop();
		assertThat(postman(carrier(port), Duration.ZERO).round()).isEqualTo(1);
		LetterView letter = letter();
		assertThat(letter.course().state()).isEqualTo(LetterState.WAITING);
		assertThat(letter.course().trouble()).containsIgnoringCase("connect");
		assertThat(postman(carrier(port), Duration.ofSeconds(30)).round()).as("it waits").isZero();
		GreenMail again = server(port);
		again.start();
		try {
			assertThat(postman(carrier(port), Duration.ofSeconds(70)).round()).isEqualTo(1);
			assertThat(again.getReceivedMessages()).hasSize(1);
			assertThat(letter().course().state()).isEqualTo(LetterState.SENT);
			assertThat(letter().course().attempts()).isEqualTo(2);
			assertThat(letter().course().trouble()).isEmpty();
		}
		finally {
			again.stop();
		}
	}

	@Test
	void afterFiveAttemptsItIsGivenUpAndSentAgainByHand() {
		contact(0, ContactView.Kind.MANAGER, "Nell Thaw", "nell@example.org");
		mailAll(LetterKind.CONFIRMATION);
		int port = this.mail.getSmtp().getPort();
		this.mail.stop();
		Duration ahead = Duration.ZERO;
		for (int attempt = 1; attempt <= 5; attempt++) {
			assertThat(letter().course().state()).isEqualTo(LetterState.WAITING);
			assertThat(postman(carrier(port), ahead).round()).isEqualTo(1);
			ahead = ahead.plus(Duration.ofHours(3));
		}
		LetterView given = letter();
		assertThat(given.course().state()).isEqualTo(LetterState.REFUSED);
		assertThat(postman(carrier(port), ahead).round()).isZero();
		this.mail = server(0);
		this.mail.start();
		UUID again = sentWith(carrier(this.mail.getSmtp().getPort())).again(given.id(), "other@example.org", SECRETARY);
		refused("letter-not-again", () -> sentWith(carrier(1)).again(given.id(), "other@example.org", SECRETARY));
		round(Duration.ZERO);
		assertThat(this.sent.letter(again).course().state()).isEqualTo(LetterState.SENT);
		assertThat(this.sent.letter(again).content()).isEqualTo(given.content());
		assertThat(this.sent.letter(given.id()).marks().againAs()).isEqualTo(again);
		assertThat(lines("letters.mailed-again")).containsExactly("1 letter, confirmation of entry");
	}

	@Test
	void whatTheServerRefusesIsShownInItsWordsAndNotTriedAgain() throws IOException {
		contact(0, ContactView.Kind.MANAGER, "Nell Thaw", "gone@example.org");
		mailAll(LetterKind.CONFIRMATION);
		try (ScriptedMailServer server = new ScriptedMailServer("550 5.1.1 No such mailbox here", "250 taken")) {
			assertThat(postman(carrier(server.port()), Duration.ZERO).round()).isEqualTo(1);
			assertThat(letter().course().state()).isEqualTo(LetterState.REFUSED);
			assertThat(letter().course().trouble()).contains("550 5.1.1 No such mailbox here");
			assertThat(postman(carrier(server.port()), Duration.ofDays(1)).round()).isZero();
			assertThat(server.letters()).isZero();
		}
		assertThat(this.sent.troubles()).containsEntry(this.competition, 1);
	}

	@Test
	void whatTheServerPutsOffIsTriedAgain() throws IOException {
		contact(0, ContactView.Kind.MANAGER, "Nell Thaw", "full@example.org");
		mailAll(LetterKind.CONFIRMATION);
		try (ScriptedMailServer server = new ScriptedMailServer("452 4.2.2 Mailbox full", "250 taken")) {
			postman(carrier(server.port()), Duration.ZERO).round();
		}
		assertThat(letter().course().state()).isEqualTo(LetterState.WAITING);
		assertThat(letter().course().trouble()).contains("Mailbox full");
	}

	/** It may have gone, so nothing sends it a second time. */
	@Test
	void aLetterWithoutAnAnswerIsNotKnownToHaveGone() throws IOException {
		contact(0, ContactView.Kind.MANAGER, "Nell Thaw", "nell@example.org");
		mailAll(LetterKind.CONFIRMATION);
		try (ScriptedMailServer server = new ScriptedMailServer("250 fine", ScriptedMailServer.HANGS_UP)) {
			postman(carrier(server.port()), Duration.ZERO).round();
			assertThat(letter().course().state()).isEqualTo(LetterState.DOUBTFUL);
			assertThat(postman(carrier(server.port()), Duration.ofDays(1)).round()).isZero();
			assertThat(server.letters()).isEqualTo(1);
		}
	}

	@Test
	void aServiceThatEndsBetweenSendingAndNotingLeavesItUnknown() {
		contact(0, ContactView.Kind.MANAGER, "Nell Thaw", "nell@example.org");
		mailAll(LetterKind.CONFIRMATION);
		assertThat(this.queue.claim(Clock.systemUTC().instant().plusSeconds(1))).isPresent();
		assertThat(round(Duration.ofMinutes(10))).isZero();
		assertThat(letter().course().state()).isEqualTo(LetterState.SENDING);
		assertThat(round(Duration.ofMinutes(16))).isZero();
		assertThat(letter().course().state()).isEqualTo(LetterState.DOUBTFUL);
		assertThat(received()).isEmpty();
	}

	/** Whatever got into the rows, a letter has one recipient and the headers of one. */
	@Test
	void aLineBreakInANameOrSubjectBeginsNoHeader() throws MessagingException {
		contact(0, ContactView.Kind.MANAGER, "Nell Thaw", "nell@example.org");
		mailAll(LetterKind.CONFIRMATION);
		this.database.sql("update letter set recipient = ?, subject = ? where state = 'WAITING'")
			.params("Nell\r\nBcc: spy@example.org", "Hello\r\nX-Spy: yes\r\n\r\nbody")
			.update();
		round(Duration.ZERO);
		MimeMessage message = received().get(0);
		assertThat(message.getAllRecipients()).hasSize(1);
		assertThat(message.getHeader("X-Spy")).isNull();
		assertThat(message.getHeader("Bcc")).isNull();
		assertThat(message.getSubject()).isEqualTo("Hello X-Spy: yes body");
		assertThat(received()).hasSize(1);
	}

	@Test
	void anAddressWithALineBreakIsRefusedHere() {
		contact(0, ContactView.Kind.MANAGER, "Nell Thaw", "nell@example.org");
		mailAll(LetterKind.CONFIRMATION);
		this.database.sql("update letter set address = ? where state = 'WAITING'")
			.param("nell@example.org\r\nRCPT TO:<spy@example.org>")
			.update();
		round(Duration.ZERO);
		assertThat(letter().course().state()).isEqualTo(LetterState.REFUSED);
		assertThat(received()).isEmpty();
	}

	@Test
	void whatDidNotGoYetIsTakenBack() {
		contact(0, ContactView.Kind.MANAGER, "Nell Thaw", "nell@example.org");
		contact(1, ContactView.Kind.COACH, "Orrin Sleet", "orrin@example.org");
		UUID sending = mailAll(LetterKind.CONFIRMATION);
		LetterView first = this.sent.letters(sending).get(0);
		this.sent.cancel(first.id(), SECRETARY);
		refused("letter-gone", () -> this.sent.cancel(first.id(), SECRETARY));
		assertThat(this.sent.cancelAll(sending, SECRETARY)).isEqualTo(1);
		refused("letter-gone", () -> this.sent.cancelAll(sending, SECRETARY));
		assertThat(round(Duration.ZERO)).isZero();
		assertThat(lines("letters.cancelled")).hasSize(2);
	}

}
