package rimebook.music.web;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import jakarta.servlet.ServletContext;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.web.context.WebApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.Cancellations;
import rimebook.competition.SegmentId;
import rimebook.draw.DrawMethod;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.music.Music;
import rimebook.music.MusicPlays;
import rimebook.music.MusicView;
import rimebook.music.Tones;
import rimebook.pages.Waiting;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

@WholeApplication
class MusicPagesIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Music music;

	@LocalServerPort
	private int port;

	private SmallCompetition day;

	private List<EntryView> teams;

	private SegmentId segment;

	private Visitor secretary;

	@BeforeEach
	void aDay() {
		this.day = SmallCompetition.running(this.context, 3, 3);
		this.teams = this.day.entries();
		this.segment = this.day.segment(1);
		this.secretary = Crew.visitor(this.context, Role.SECRETARY);
	}

	@Test
	void aFileIsHandedInPlayedInPartsAndReplaced() {
		byte[] file = Tones.wav(161_000, 440);
		Visitor.Page page = handIn(0, "C:\\music\\Free \"final\" (2).mp3", file);
		assertThat(page.text()).contains("The music of", "2:41", "WAV");
		String address = page.document().selectFirst("audio").attr("src");
		HttpResponse<byte[]> whole = this.secretary.bytes(address);
		assertThat(whole.body()).isEqualTo(file);
		assertThat(whole.headers().firstValue("Content-Type")).contains("audio/wav");
		assertThat(whole.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
		assertThat(whole.headers().firstValue("Content-Disposition").orElseThrow()).startsWith("attachment;");
		assertThat(whole.headers().firstValue("Content-Security-Policy").orElseThrow())
			.startsWith("default-src 'none'");
		HttpResponse<String> part = this.secretary.json("GET", address, "", "Range", "bytes=4-7");
		assertThat(part.statusCode()).isEqualTo(206);
		assertThat(part.headers().firstValue("Content-Range")).contains("bytes 4-7/" + file.length);
		assertThat(handIn(0, "other.wav", Tones.wav(100_000, 441)).text()).contains("1:40; 0:50 shorter");
		assertThat(this.secretary.bytes(address).statusCode()).as("versions stay").isEqualTo(200);
	}

	@Test
	void whatIsRefusedIsSaidBesideTheField() {
		Visitor.Page empty = handIn(0, "empty.mp3", new byte[0]);
		assertThat(empty.status()).isEqualTo(422);
		assertThat(empty.text()).contains("Choose a file.");
		assertThat(handIn(0, "song.mp3", "no sound".repeat(1000).getBytes(StandardCharsets.UTF_8)).text())
			.contains("This is no music that browsers play");
		assertThat(handIn(0, "x".repeat(300) + "\u0007.mp3", Tones.wav(1000, 442)).text()).contains("xxxx…");
	}

	@Test
	void aTooLargeFileIsStoppedAtTheDoorAndOthersDoorsStayAsNarrow() throws IOException {
		String form = "/desk/music/entry/" + this.teams.get(0).id() + "/" + this.segment;
		assertThat(said(form, 100 << 20)).startsWith("HTTP/1.1 413");
		assertThat(said("/desk/officials/import", 10 << 20)).startsWith("HTTP/1.1 413");
		assertThat(said("/desk/music/desk/../../officials/import", 10 << 20)).startsWith("HTTP/1.1 413");
	}

	/** All of it, as browsers do, which show no answer before. */
	private String said(String path, int length) throws IOException {
		try (Socket socket = new Socket("localhost", this.port)) {
			socket.setSoTimeout(5000);
			socket.getOutputStream()
				.write(("POST " + path + " HTTP/1.1\r\nHost: localhost\r\nCookie: " + this.secretary.cookies()
						+ "\r\nContent-Type: multipart/form-data; boundary=a\r\n" + "Content-Length: " + length
						+ "\r\n\r\n")
					.getBytes(StandardCharsets.US_ASCII));
			for (int sent = 0; sent < length; sent += 1 << 20) {
				socket.getOutputStream().write(new byte[Math.min(1 << 20, length - sent)]);
			}
			return new String(socket.getInputStream().readNBytes(12), StandardCharsets.US_ASCII);
		}
	}

	@Test
	void whoeverHangsUpInTheMiddleLeavesNothing() throws IOException {
		String path = "/desk/music/entry/" + this.teams.get(0).id() + "/" + this.segment;
		try (Socket socket = new Socket("localhost", this.port)) {
			OutputStream out = socket.getOutputStream();
			out.write(("POST " + path + " HTTP/1.1\r\nHost: localhost\r\nCookie: " + this.secretary.cookies()
					+ "\r\nContent-Type: multipart/form-data; boundary=a\r\nContent-Length: 2000000\r\n\r\n--a\r\n"
					+ "Content-Disposition: form-data; name=\"file\"; filename=\"a.wav\"\r\n\r\n")
				.getBytes(StandardCharsets.US_ASCII));
			out.write(Tones.wav(100_000, 443));
			out.flush();
			await("the server receives it").untilAsserted(() -> assertThat(received()).isNotEmpty());
		}
		await("it is gone").untilAsserted(() -> assertThat(received()).isEmpty());
		assertThat(this.music.of(this.teams.get(0).id()).get(0).versions()).isEmpty();
	}

	/** What the server puts aside until a form is whole. */
	private List<String> received() throws IOException {
		File folder = (File) ((WebApplicationContext) this.context).getServletContext()
			.getAttribute(ServletContext.TEMPDIR);
		try (Stream<Path> files = Files.list(folder.toPath())) {
			return files.map((file) -> file.getFileName().toString()).filter((name) -> name.endsWith(".tmp")).toList();
		}
	}

	@Test
	void theDeskHasEveryStateAndTheZipIsInStartingOrder() throws IOException {
		byte[] first = Tones.wav(160_000, 444);
		byte[] second = Tones.wav(161_000, 445);
		handIn(0, "a.wav", first);
		handIn(1, "b.wav", second);
		this.day.draw(1);
		Visitor announcer = Crew.visitor(this.context, Role.ANNOUNCER);
		Visitor.Page desk = announcer.open("/desk/music/desk/" + this.segment);
		assertThat(desk.text()).contains("No music of 1 team:").doesNotContain("withdrawn");
		assertThat(desk.document().select("tr[data-version]")).hasSize(2);
		assertThat(desk.document().select("tbody td:first-child").eachText()).containsExactly("1", "2", "3");
		List<String> names = new ArrayList<>();
		try (ZipInputStream zip = new ZipInputStream(
				new ByteArrayInputStream(announcer.bytes("/desk/music/desk/" + this.segment + "/all.zip").body()))) {
			for (ZipEntry file = zip.getNextEntry(); file != null; file = zip.getNextEntry()) {
				names.add(file.getName());
				assertThat(zip.readAllBytes()).isIn(first, second);
			}
		}
		List<String> order = desk.document()
			.select("tr[data-version]")
			.stream()
			.map((row) -> "0" + row.attr("data-number") + " " + row.attr("data-team") + ".wav")
			.toList();
		assertThat(names).isEqualTo(order);
		this.context.getBean(Entries.class)
			.withdraw(this.teams.get(0).id(), this.teams.get(0).version(), "Ill.", SECRETARY);
		Visitor.Page after = announcer.open("/desk/music/desk/" + this.segment);
		assertThat(after.text()).contains("withdrawn");
		assertThat(after.document().select("tr[data-version]")).hasSize(1);
	}

	@Test
	void whereNothingIsTakenNothingIsOfferedNorMissing() {
		String desk = "/desk/music/desk/" + this.segment;
		String entry = "/desk/music/entry/" + this.teams.get(0).id();
		String offered = "form[action*='" + this.segment + "/on-site'], a.button[href$='" + this.segment + "']";
		handIn(1, "a.wav", Tones.wav(160_000, 448));
		assertThat(this.secretary.open(desk).document().select(offered)).hasSize(2);
		assertThat(this.secretary.open(entry).document().select(offered)).hasSize(2);
		Cancellations cancellations = this.context.getBean(Cancellations.class);
		cancellations.cancel(this.segment, "The ice broke.", SECRETARY);
		Visitor.Page cancelled = this.secretary.open(desk + "/lines");
		assertThat(cancelled.text()).contains("The ice broke.").doesNotContain("No music of");
		assertThat(cancelled.document().select(offered)).isEmpty();
		assertThat(cancelled.document().select("tr[data-version]")).as("its music is still there").hasSize(1);
		assertThat(this.secretary.open(entry).document().select(offered)).isEmpty();
		assertThat(handIn(0, "a.wav", Tones.wav(1000, 449)).text()).contains("cancelled");
		cancellations.bringBack(this.segment, SECRETARY);
		assertThat(this.secretary.open(desk).document().select(offered)).hasSize(2);
	}

	/** Where nobody has music nobody waits for any. */
	@Test
	void whatIsMissingWaitsAtTheDeskUntilTheSegmentBegins() {
		assertThat(waiting()).isEmpty();
		handIn(0, "a.wav", Tones.wav(160_000, 450));
		assertThat(waiting()).containsExactly(2);
		assertThat(this.secretary.open("/desk").text()).contains("Music for 2 programmes is missing");
		this.day.draw(1);
		MusicView.VersionId played = this.music.of(this.teams.get(0).id()).get(0).versions().get(0).id();
		this.context.getBean(MusicPlays.class)
			.note(new MusicPlays.NotePlay(UUID.randomUUID(), played, Instant.now()), SECRETARY);
		assertThat(waiting()).isEmpty();
	}

	private List<Integer> waiting() {
		return this.context.getBean(MusicWaiting.class)
			.waiting(SECRETARY)
			.filter((line) -> line.place().where().equals(this.day.competition().name()))
			.map(Waiting::count)
			.toList();
	}

	@Test
	void anOpenDeskHasTheOrderThatIsDrawnAnew() {
		this.day.draw(1);
		StartingOrderDraw draw = this.context.getBean(StartingOrderDraw.class);
		for (String seed : List.of("a", "b", "c")) {
			draw.draw(new StartingOrderDraw.Order(this.segment, DrawMethod.WHOLE_FIELD, seed, 4, "Read out wrongly."),
					SmallCompetition.REFEREE);
			assertThat(this.secretary.open("/desk/music/desk/" + this.segment + "/lines")
				.document()
				.select("tr[data-entry]")
				.eachAttr("data-entry"))
				.isEqualTo(draw.ofSegment(this.segment)
					.orElseThrow()
					.starts()
					.stream()
					.map((start) -> start.entry().toString())
					.toList());
		}
	}

	@Test
	void thePageTellsWhatItPlayedAndOnSiteIsTickedThere() {
		handIn(0, "a.wav", Tones.wav(160_000, 446));
		Visitor announcer = Crew.visitor(this.context, Role.ANNOUNCER);
		Visitor.Page desk = announcer.open("/desk/music/desk/" + this.segment);
		Map<String, String> play = Map.of("play", UUID.randomUUID().toString(), "version",
				desk.document().selectFirst("tr[data-version]").attr("data-version"), "startedAt",
				Instant.now().toString());
		assertThat(desk.submit("form#played", play).status()).isEqualTo(204);
		assertThat(announcer.open("/desk/music/desk/" + this.segment).submit("form#played", play).status())
			.isEqualTo(204);
		assertThat(this.context.getBean(MusicPlays.class).ofSegment(this.segment).get(this.teams.get(0).id()))
			.hasSize(1);
		Element missing = desk.document().selectFirst("form[action$='/on-site']");
		Visitor.Page noted = desk.press("form[action$='/on-site']:has(input[value='"
				+ missing.selectFirst("input[name=entry]").attr("value") + "'])");
		assertThat(noted.text()).contains("Noted that the music is on site.", "on site");
	}

	@Test
	void theStandShowsWhoLacksMusicOnceMusicIsKept() {
		this.day.open(1);
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		assertThat(referee.open("/desk/stand/" + this.segment).text()).doesNotContain("no music");
		handIn(0, "a.wav", Tones.wav(160_000, 447));
		assertThat(referee.open("/desk/stand/" + this.segment).document().select("a.state.stop").eachText())
			.containsExactly("no music", "no music");
	}

	private Visitor.Page handIn(int team, String name, byte[] file) {
		return this.secretary.open("/desk/music/entry/" + this.teams.get(team).id() + "/" + this.segment)
			.upload("form[enctype]", Map.of(), name.replace("\"", "%22"), file);
	}

}
