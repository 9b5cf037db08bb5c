package rimebook.music;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.springframework.core.io.InputStreamSource;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.http.ResponseEntity;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.KeptUntilTheDay;
import rimebook.entries.Entries;
import rimebook.entries.Renaming;
import rimebook.entries.TeamView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Recordings of how teams say their own names, for whoever announces and comments, and
 * for nobody else. There is one a team, in all its competitions; a new one takes its
 * place and a removed one is gone, since it is somebody's voice. It goes on the day on
 * which the personal data of a competition go, unless the team is in another one that is
 * not over.
 */
@Service
@Transactional(readOnly = true)
public class SpokenNames implements KeptUntilTheDay {

	/** The largest file that is taken: 1 MiB. */
	public static final int MOST_BYTES = 1024 * 1024;

	/** The longest recording that is taken, in seconds. */
	public static final int MOST_SECONDS = 20;

	/** Shorter names than that are not said. */
	private static final int SHORTEST = 300;

	private static final String COLUMNS = "select team_id, kind, milliseconds, bytes, sha256, recorded_by, recorded_at "
			+ "from spoken_name ";

	private final JdbcClient database;

	private final Recognition recognition;

	private final Renaming teams;

	private final Entries entries;

	private final Competitions competitions;

	private final Acts acts;

	SpokenNames(JdbcClient database, Recognition recognition, Renaming teams, Entries entries,
			Competitions competitions, Acts acts) {
		this.database = database;
		this.recognition = recognition;
		this.teams = teams;
		this.entries = entries;
		this.competitions = competitions;
		this.acts = acts;
	}

	/**
	 * Hand a recording in, in place of what was there.
	 * @throws RuleViolationException for the field {@code file}: {@code music-missing},
	 * {@code spoken-too-large}, {@code spoken-too-long}, {@code music-unknown},
	 * {@code music-broken}
	 * @throws ConflictException {@code stale-version} if another one is there than was
	 * seen
	 * @throws NotFoundException if there is no such team
	 * @throws UncheckedIOException if the file cannot be read to its end
	 */
	@Transactional
	public SpokenName record(Recording order, Actor actor) {
		TeamView.Id team = this.teams.team(order.team()).team().id();
		byte[] content = bytes(order);
		Recognition.Recognised found = look(order);
		Optional<SpokenName> before = of(team);
		requireSeen(before, order.seen());
		SpokenName name = new SpokenName(team, found.kind(), found.milliseconds(), content.length, sha256(content),
				actor.name(), this.acts.now());
		delete(team, order.seen());
		try {
			this.database
				.sql("insert into spoken_name (team_id, kind, milliseconds, bytes, sha256, recorded_by, recorded_at, "
						+ "content) values (?, ?, ?, ?, ?, ?, ?, ?)")
				.params(team.value(), name.kind().name(), name.milliseconds(), name.bytes(), name.sha256(), name.by(),
						name.at().atOffset(ZoneOffset.UTC), content)
				.update();
		}
		catch (DataIntegrityViolationException ex) {
			throw stale();
		}
		this.acts.publish(AuditedChange.of(actor, "team", team, "team.name-recorded")
			.from(before.map(SpokenName::inWords).orElse(""), name.inWords()));
		return name;
	}

	/**
	 * Delete the recording; nothing of it is kept.
	 * @param seen the digest of the one that was seen
	 * @throws ConflictException {@code stale-version} if another one is there, or none
	 */
	@Transactional
	public void remove(TeamView.Id team, String seen, Actor actor) {
		SpokenName name = of(team).orElseThrow(SpokenNames::stale);
		requireSeen(Optional.of(name), seen);
		remove(name, actor);
	}

	private void remove(SpokenName name, Actor actor) {
		delete(name.team(), name.sha256());
		this.acts
			.publish(AuditedChange.of(actor, "team", name.team(), "team.recording-removed").from(name.inWords(), ""));
	}

	/** The recording of a team, if there is one. */
	public Optional<SpokenName> of(TeamView.Id team) {
		return this.database.sql(COLUMNS + "where team_id = ?").param(team.value()).query(SpokenNames::read).optional();
	}

	/** The recordings of these teams, with one question. */
	public Map<TeamView.Id, SpokenName> of(Collection<TeamView.Id> teams) {
		return teams.isEmpty() ? Map.of()
				: this.database.sql(COLUMNS + "where team_id in (:teams)")
					.param("teams", teams.stream().map(TeamView.Id::value).distinct().toList())
					.query(SpokenNames::read)
					.list()
					.stream()
					.collect(Collectors.toMap(SpokenName::team, Function.identity()));
	}

	/**
	 * The recording of a team with its bytes.
	 * @throws NotFoundException if there is none
	 */
	public Content content(TeamView.Id team) {
		SpokenName name = of(team).orElseThrow(() -> NotFoundException.of("music", team));
		byte[] bytes = this.database.sql("select content from spoken_name where team_id = ?")
			.param(team.value())
			.query(byte[].class)
			.single();
		return new Content(name, bytes);
	}

	/** Tell whether a team is, or was, entered into that competition. */
	public boolean isIn(TeamView.Id team, CompetitionId competition) {
		return competitions(team).anyMatch((one) -> one.id().equals(competition));
	}

	@Override
	@Transactional
	public void delete(CompetitionId competition, Actor actor) {
		this.database.sql(COLUMNS + "order by team_id")
			.query(SpokenNames::read)
			.list()
			.stream()
			.filter((name) -> isIn(name.team(), competition))
			.filter((name) -> competitions(name.team())
				.noneMatch((one) -> !one.id().equals(competition) && one.state().isOpenToChange()))
			.forEach((name) -> remove(name, actor));
	}

	private Stream<CompetitionView> competitions(TeamView.Id team) {
		return this.entries.ofTeam(team)
			.stream()
			.map((entry) -> this.competitions.event(entry.event()).competition())
			.distinct()
			.map(this.competitions::competition);
	}

	private void delete(TeamView.Id team, String seen) {
		int gone = this.database.sql("delete from spoken_name where team_id = ? and sha256 = ?")
			.params(team.value(), seen)
			.update();
		if (gone == 0 && !seen.isEmpty()) {
			throw stale();
		}
	}

	private static void requireSeen(Optional<SpokenName> there, String seen) {
		if (!there.map(SpokenName::sha256).orElse("").equals(seen)) {
			throw stale();
		}
	}

	private static ConflictException stale() {
		return ConflictException.stale("spoken-name");
	}

	private Recognition.Recognised look(Recording order) {
		try {
			Recognition.Recognised found = this.recognition.recognise(order.file(), order.length(), SHORTEST);
			if (found.milliseconds() > 1000L * MOST_SECONDS) {
				throw new RuleViolationException("spoken-too-long", "file", Sentence.of("music.spoken-too-long",
						(int) Math.min(99_999, (found.milliseconds() + 999) / 1000), MOST_SECONDS));
			}
			return found;
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** A little more than may come is read, whatever was said of its length. */
	private static byte[] bytes(Recording order) {
		if (order.length() == 0) {
			throw new RuleViolationException("music-missing", "file", Sentence.of("music.missing"));
		}
		try (InputStream from = order.file().getInputStream()) {
			byte[] bytes = (order.length() > MOST_BYTES) ? new byte[0] : from.readNBytes(MOST_BYTES + 1);
			if (order.length() > MOST_BYTES || bytes.length > MOST_BYTES) {
				throw new RuleViolationException("spoken-too-large", "file",
						Sentence.of("music.spoken-too-large", MOST_BYTES / (1024 * 1024)));
			}
			return bytes;
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static String sha256(byte[] bytes) {
		try {
			return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException(ex);
		}
	}

	private static SpokenName read(ResultSet row, int number) throws SQLException {
		return new SpokenName(new TeamView.Id(row.getObject("team_id", UUID.class)),
				MusicKind.valueOf(row.getString("kind")), row.getLong("milliseconds"), row.getLong("bytes"),
				row.getString("sha256"), row.getString("recorded_by"),
				row.getObject("recorded_at", OffsetDateTime.class).toInstant());
	}

	/** A recording with its bytes, at most {@link #MOST_BYTES}. */
	public record Content(SpokenName name, byte[] bytes) {

		/** The answer to a player that asks for it. */
		public ResponseEntity<byte[]> answer() {
			return Played.answer(this.name.kind(), "name." + this.name.kind().ending(), this.name.sha256(), this.bytes);
		}

		@Override
		public boolean equals(Object other) {
			return other instanceof Content content && content.name.equals(this.name);
		}

		@Override
		public int hashCode() {
			return this.name.hashCode();
		}

	}

	/**
	 * A recording that is handed in.
	 *
	 * @param seen the digest of the one that was seen, empty where there was none
	 * @param file gives its bytes from the beginning each time it is asked
	 * @param length in bytes
	 */
	public record Recording(TeamView.Id team, String seen, InputStreamSource file, long length) {
	}

}
