package rimebook.letters;

import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mail.javamail.JavaMailSenderImpl;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.pages.PdfPage;
import rimebook.rosters.ContactView;
import rimebook.rosters.Contacts;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.RimebookException;
import rimebook.testsupport.SmallCompetition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

/** A competition with teams to write to, and a mail server that takes letters. */
abstract class LettersDay {

	@Autowired
	ApplicationContext context;

	@Autowired
	Letters letters;

	@Autowired
	SentLetters sent;

	@Autowired
	LetterTexts texts;

	@Autowired
	TeamLanguages languages;

	@Autowired
	LetterQueue queue;

	@Autowired
	LetterStore store;

	@Autowired
	JdbcClient database;

	@Autowired
	TransactionTemplate transaction;

	GreenMail mail = server(0);

	SmallCompetition day;

	CompetitionId competition;

	static GreenMail server(int port) {
		return new GreenMail(new ServerSetup(port, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
	}

	@BeforeEach
	void aDayAndAServer() {
		this.mail.start();
		this.database.sql("delete from letter_language").update();
		this.database.sql("update letter set state = 'CANCELLED', due_at = null where state in ('WAITING', 'SENDING')")
			.update();
		this.day = SmallCompetition.running(this.context, 3, 3);
		this.competition = this.day.competition().id();
	}

	@AfterEach
	void noServerAnyMore() {
		this.mail.stop();
	}

	EntryView team(int number) {
		return this.day.entries().get(number);
	}

	void contact(int team, ContactView.Kind kind, String name, String mail) {
		this.context.getBean(Contacts.class)
			.add(new Contacts.AddContact(team(team).id(), kind, name, "", mail), SECRETARY);
	}

	void contact(EntryView entry, String name, String mail) {
		this.context.getBean(Contacts.class)
			.add(new Contacts.AddContact(entry.id(), ContactView.Kind.MANAGER, name, "", mail), SECRETARY);
	}

	static String mailOf(EntryView entry) {
		return entry.team().name().replace(' ', '.') + "@example.org";
	}

	Letters.Preview preview(SmallCompetition of, LetterKind kind) {
		return this.letters.preview(new Letters.Order(of.competition().id(), kind,
				of.entries().stream().map(EntryView::id).collect(Collectors.toSet())), SECRETARY);
	}

	Letters.Order order(LetterKind kind) {
		Set<EntryId> teams = this.letters.recipients(this.competition, LetterKind.FREE)
			.stream()
			.map((one) -> one.entry().id())
			.collect(Collectors.toSet());
		return new Letters.Order(this.competition, kind, teams);
	}

	UUID mailAll(LetterKind kind) {
		Letters.Order order = order(kind);
		return mail(mailing(), order, this.letters.preview(order, SECRETARY).seen());
	}

	UUID mail(Letters mailing, Letters.Order order, String seen) {
		return this.transaction.execute((status) -> mailing.mail(order, seen, SECRETARY));
	}

	/** Letters of a service that has a mail server, which the shared one has not. */
	Letters mailing() {
		return new Letters(this.context.getBean(LetterDrafts.class), this.store, carrier(1),
				this.context.getBean(PersonalLinks.class), this.context.getBean(Competitions.class),
				this.context.getBean(PdfPage.class), this.context.getBean(Acts.class));
	}

	Again sentWith(Carrier carrier) {
		SentLetters letters = new SentLetters(this.store, carrier, this.context.getBean(TextStore.class),
				this.context.getBean(Competitions.class), this.context.getBean(Acts.class));
		return (letter, mail, actor) -> this.transaction.execute((status) -> letters.again(letter, mail, actor));
	}

	Carrier carrier(int port) {
		JavaMailSenderImpl sender = new JavaMailSenderImpl();
		sender.setHost("127.0.0.1");
		sender.setPort(port);
		sender.getJavaMailProperties().put("mail.smtp.connectiontimeout", "5000");
		sender.getJavaMailProperties().put("mail.smtp.timeout", "5000");
		return new Carrier(sender, "desk@rink.example", "");
	}

	Postman postman(Carrier carrier, Duration ahead) {
		return new Postman(this.queue, carrier, this.context.getBean(LinkedLetters.class),
				Clock.offset(Clock.systemUTC(), ahead.plusMillis(5)));
	}

	int round(Duration ahead) {
		return postman(carrier(this.mail.getSmtp().getPort()), ahead).round();
	}

	List<MimeMessage> received() {
		return new ArrayList<>(Arrays.asList(this.mail.getReceivedMessages()));
	}

	static String body(MimeMessage message) throws MessagingException, IOException {
		return message.getContent().toString().replace("\r\n", "\n");
	}

	/** The only letter of the newest sending. */
	LetterView letter() {
		return this.sent.letters(this.sent.of(this.competition).get(0).id()).get(0);
	}

	List<String> lines(String action) {
		return this.database
			.sql("select after_text from record_line where action = ? and subject_id = ? order by number")
			.params(action, this.competition.toString())
			.query(String.class)
			.list();
	}

	static void refused(String code, Runnable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo(code));
	}

	/** Sends a letter again. */
	@FunctionalInterface
	interface Again {

		UUID again(UUID letter, String mail, Actor actor);

	}

}
