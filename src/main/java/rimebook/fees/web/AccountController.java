package rimebook.fees.web;

import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.Locale;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.entries.ClubView;
import rimebook.fees.ClubAccount;
import rimebook.fees.FeeStatement;
import rimebook.fees.Fees;
import rimebook.fees.Ledger;
import rimebook.pages.Choice;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;

/** The account of one club, its statement, and what is booked by hand. */
@Controller
@RequestMapping("/desk/fees/{competition}/club/{club}")
class AccountController {

	private final Fees fees;

	private final Ledger ledger;

	private final FeeStatement statement;

	private final Competitions competitions;

	AccountController(Fees fees, Ledger ledger, FeeStatement statement, Competitions competitions) {
		this.fees = fees;
		this.ledger = ledger;
		this.statement = statement;
		this.competitions = competitions;
	}

	@GetMapping
	String show(@PathVariable CompetitionId competition, @PathVariable ClubView.Id club, Model model) {
		ClubAccount account = into(competition, club, model);
		model.addAttribute("teamNames",
				account.teams()
					.stream()
					.collect(Collectors.toMap((team) -> team.entry().id().toString(), AccountController::name)));
		model.addAttribute("numbers",
				account.rows()
					.stream()
					.collect(Collectors.toMap((row) -> row.id().toString(), (row) -> String.valueOf(row.number()))));
		return "fees/account";
	}

	@GetMapping("/payment")
	String payment(@PathVariable CompetitionId competition, @PathVariable ClubView.Id club, Model model) {
		ClubAccount account = this.fees.account(competition, club);
		String open = account.balance().open().isSome() ? account.balance().open().plain() : "";
		return ask(Act.PAYMENT, competition, club, new BookingForm("", open, "", account.version()), model);
	}

	@PostMapping("/payment")
	String pay(@PathVariable CompetitionId competition, @PathVariable ClubView.Id club,
			@ModelAttribute("bookingForm") BookingForm form, BindingResult result, Actor actor, Model model,
			RedirectAttributes redirect) {
		return book(Act.PAYMENT, competition, club, form, result, model, redirect,
				(order) -> this.ledger.pay(order, actor));
	}

	@GetMapping("/refund")
	String refund(@PathVariable CompetitionId competition, @PathVariable ClubView.Id club, Model model) {
		ClubAccount account = this.fees.account(competition, club);
		String credit = account.balance().credit().isSome() ? account.balance().credit().plain() : "";
		return ask(Act.REFUND, competition, club, new BookingForm("", credit, "", account.version()), model);
	}

	@PostMapping("/refund")
	String giveBack(@PathVariable CompetitionId competition, @PathVariable ClubView.Id club,
			@ModelAttribute("bookingForm") BookingForm form, BindingResult result, Actor actor, Model model,
			RedirectAttributes redirect) {
		return book(Act.REFUND, competition, club, form, result, model, redirect,
				(order) -> this.ledger.refund(order, actor));
	}

	@GetMapping("/waiver")
	String waiver(@PathVariable CompetitionId competition, @PathVariable ClubView.Id club, Model model) {
		ClubAccount account = this.fees.account(competition, club);
		return ask(Act.WAIVER, competition, club, new BookingForm("", "", "", account.version()), model);
	}

	@PostMapping("/waiver")
	String waive(@PathVariable CompetitionId competition, @PathVariable ClubView.Id club,
			@ModelAttribute("bookingForm") BookingForm form, BindingResult result, Actor actor, Model model,
			RedirectAttributes redirect) {
		return book(Act.WAIVER, competition, club, form, result, model, redirect,
				(order) -> this.ledger.waive(order, form.team(), actor));
	}

	@GetMapping("/statement.pdf")
	ResponseEntity<byte[]> pdf(@PathVariable CompetitionId competition, @PathVariable ClubView.Id club) {
		ContentDisposition name = ContentDisposition.inline().filename(file(competition, club) + ".pdf").build();
		return ResponseEntity.ok()
			.contentType(MediaType.APPLICATION_PDF)
			.cacheControl(CacheControl.noStore())
			.header(HttpHeaders.CONTENT_DISPOSITION, name.toString())
			.body(this.statement.pdf(competition, club));
	}

	@GetMapping("/statement.csv")
	ResponseEntity<byte[]> csv(@PathVariable CompetitionId competition, @PathVariable ClubView.Id club) {
		ContentDisposition name = ContentDisposition.attachment().filename(file(competition, club) + ".csv").build();
		return ResponseEntity.ok()
			.contentType(new MediaType("text", "csv", StandardCharsets.UTF_8))
			.cacheControl(CacheControl.noStore())
			.header(HttpHeaders.CONTENT_DISPOSITION, name.toString())
			.body(this.statement.csv(competition, club).getBytes(StandardCharsets.UTF_8));
	}

	/** Names of files are understood everywhere without letters of their own. */
	private String file(CompetitionId competition, ClubView.Id club) {
		String name = this.fees.account(competition, club).club().name().replaceAll("[^A-Za-z0-9]+", "-");
		return this.competitions.competition(competition).slug() + "-statement-" + name;
	}

	private String book(Act act, CompetitionId competition, ClubView.Id club, BookingForm form, BindingResult result,
			Model model, RedirectAttributes redirect, Booking booking) {
		if (Submission.refused(result, () -> booking
			.book(form.order(competition, club, this.fees.account(competition, club).balance().open().currency())))) {
			return ask(act, competition, club, null, model);
		}
		Notice.give(redirect, "fees.booked." + act);
		return "redirect:/desk/fees/" + competition + "/club/" + club;
	}

	/**
	 * @param form {@code null} where one that was refused is in the model already
	 */
	private String ask(Act act, CompetitionId competition, ClubView.Id club, @Nullable BookingForm form, Model model) {
		ClubAccount account = into(competition, club, model);
		if (form != null) {
			model.addAttribute("bookingForm", form);
		}
		model.addAttribute("act", act);
		model.addAttribute("word", act.name().toLowerCase(Locale.ROOT));
		model.addAttribute("teams",
				account.teams()
					.stream()
					.sorted(Comparator.comparing(AccountController::name))
					.map((team) -> Choice.of(team.entry().id(), name(team) + ": " + team.waivable()))
					.toList());
		return "fees/booking";
	}

	private ClubAccount into(CompetitionId id, ClubView.Id club, Model model) {
		CompetitionView competition = this.competitions.competition(id);
		ClubAccount account = this.fees.account(id, club);
		model.addAttribute("competition", competition);
		model.addAttribute("zone", competition.zone());
		model.addAttribute("account", account);
		return account;
	}

	private static String name(ClubAccount.TeamFees team) {
		return team.entry().team().name() + ", " + team.event().name();
	}

	/** What is booked by hand. */
	enum Act {

		PAYMENT, REFUND, WAIVER

	}

	/** Books what was typed. */
	@FunctionalInterface
	private interface Booking {

		void book(Ledger.Book order);

	}

}
