package rimebook.managers;

import java.util.Optional;

import org.springframework.core.io.InputStreamSource;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.accounts.TeamLinks;
import rimebook.entries.Renaming;
import rimebook.entries.TeamView;
import rimebook.music.SpokenName;
import rimebook.music.SpokenNames;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;

/** How the name of the team of a link is said, in writing and as a recording. */
@Service
@Transactional(readOnly = true)
public class OwnName {

	private final OwnTeam own;

	private final Renaming names;

	private final SpokenNames recordings;

	OwnName(OwnTeam own, Renaming names, SpokenNames recordings) {
		this.own = own;
		this.names = names;
		this.recordings = recordings;
	}

	/** How it is written down. */
	public Renaming.KnownTeam of(TeamLinks.Pass pass) {
		return this.names.team(this.own.about(pass).entry().team().id());
	}

	/**
	 * Write down how the team's name is said; what it is called stays.
	 * @param version as it was seen
	 * @throws ConflictException {@code own-team-withdrawn}, and as
	 * {@link Renaming#change(Renaming.ChangeTeam, Actor)}
	 */
	@Transactional
	public void say(TeamLinks.Pass pass, int version, String spokenAs, Actor actor) {
		TeamView team = this.own.toChange(pass).entry().team();
		this.names.change(new Renaming.ChangeTeam(team.id(), version, team.name(), spokenAs), actor);
	}

	/** The recording, if there is one. */
	public Optional<SpokenName> recording(TeamLinks.Pass pass) {
		return this.recordings.of(this.own.about(pass).entry().team().id());
	}

	/**
	 * The recording with its bytes.
	 * @throws rimebook.shared.NotFoundException if there is none
	 */
	public SpokenNames.Content content(TeamLinks.Pass pass) {
		return this.recordings.content(this.own.about(pass).entry().team().id());
	}

	/**
	 * Hand a recording in, in place of the one that was seen.
	 * @throws ConflictException {@code own-team-withdrawn}, and as
	 * {@link SpokenNames#record}
	 */
	@Transactional
	public void record(TeamLinks.Pass pass, String seen, InputStreamSource file, long length, Actor actor) {
		TeamView team = this.own.toChange(pass).entry().team();
		this.recordings.record(new SpokenNames.Recording(team.id(), seen, file, length), actor);
	}

	/**
	 * Delete the recording that was seen.
	 * @throws ConflictException {@code own-team-withdrawn}, and as
	 * {@link SpokenNames#remove}
	 */
	@Transactional
	public void remove(TeamLinks.Pass pass, String seen, Actor actor) {
		this.recordings.remove(this.own.toChange(pass).entry().team().id(), seen, actor);
	}

}
