package rimebook.fees;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.entries.ClubView;
import rimebook.entries.EntryId;
import rimebook.pages.PdfPage;
import rimebook.shared.Acts;
import rimebook.shared.NotFoundException;
import rimebook.shared.SpreadsheetCell;
import rimebook.wording.Figures;

/**
 * What a club is told of its account: on paper, and as a table. Who wrote what is not
 * told.
 */
@Service
@Transactional(readOnly = true)
public class FeeStatement {

	private final Fees fees;

	private final Competitions competitions;

	private final PdfPage paper;

	private final Acts acts;

	FeeStatement(Fees fees, Competitions competitions, PdfPage paper, Acts acts) {
		this.fees = fees;
		this.competitions = competitions;
		this.paper = paper;
		this.acts = acts;
	}

	/**
	 * The statement as a document on A4, as things stand now.
	 * @throws NotFoundException as for {@link Fees#account}
	 */
	public byte[] pdf(CompetitionId id, ClubView.Id club) {
		CompetitionView competition = this.competitions.competition(id);
		ClubAccount account = this.fees.account(id, club);
		Instant made = this.acts.now();
		return this.paper.of("fees/statement-paper", Locale.ENGLISH,
				Map.of("competition", competition, "zone", competition.zone(), "account", account, "made", made,
						"figures", new Figures(Locale.ENGLISH), "size", "A4"),
				made);
	}

	/**
	 * The rows of the ledger and, last, what is open or was paid too much.
	 * @throws NotFoundException as for {@link Fees#account}
	 */
	public String csv(CompetitionId id, ClubView.Id club) {
		ClubAccount account = this.fees.account(id, club);
		ZoneId zone = this.competitions.competition(id).zone();
		StringBuilder text = new StringBuilder();
		try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.DEFAULT)) {
			printer.printRecord("written", "kind", "event", "team", "amount", "currency", "why");
			for (LedgerRowView row : account.rows()) {
				print(printer, account, row, zone);
			}
			boolean tooMuch = account.balance().credit().isSome();
			printer.printRecord(time(this.acts.now(), zone), tooMuch ? "credit" : "open", "", "",
					(tooMuch ? account.balance().credit() : account.balance().open()).plain(),
					account.balance().open().currency().getCurrencyCode(), "");
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return text.toString();
	}

	private static void print(CSVPrinter printer, ClubAccount account, LedgerRowView row, ZoneId zone)
			throws IOException {
		ClubAccount.TeamFees team = (row.entry() != null) ? team(account, row.entry()) : null;
		printer.printRecord(Stream
			.of(time(row.written().at(), zone), row.kind().name().toLowerCase(Locale.ROOT),
					(team != null) ? team.event().name() : "", (team != null) ? team.entry().team().name() : "",
					row.amount().plain(), row.amount().currency().getCurrencyCode(), row.why())
			.map(SpreadsheetCell::of));
	}

	private static ClubAccount.TeamFees team(ClubAccount account, EntryId entry) {
		return Objects.requireNonNull(
				account.teams().stream().filter((one) -> one.entry().id().equals(entry)).findFirst().orElse(null));
	}

	private static String time(Instant instant, ZoneId zone) {
		return DateTimeFormatter.ISO_OFFSET_DATE_TIME
			.format(instant.truncatedTo(ChronoUnit.SECONDS).atZone(zone).toOffsetDateTime());
	}

}
