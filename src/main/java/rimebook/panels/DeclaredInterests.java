package rimebook.panels;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Component;

import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/** What officials declared about themselves, each bond once. */
@Component
class DeclaredInterests {

	private final InterestRepository interests;

	private final Acts acts;

	DeclaredInterests(InterestRepository interests, Acts acts) {
		this.acts = acts;
		this.interests = interests;
	}

	List<Interest> of(OfficialView.Id official) {
		return this.interests.findByOfficialIdOrderByTeamAscKindAsc(official.value());
	}

	/** What each of those officials declared, who declared nothing left out. */
	Map<OfficialView.Id, List<Interest>> of(Collection<OfficialView.Id> officials) {
		return this.interests
			.findByOfficialIdInOrderByTeamAscKindAsc(officials.stream().map(OfficialView.Id::value).toList())
			.stream()
			.collect(Collectors.groupingBy(Interest::official));
	}

	/** Every bond to a team of that name. */
	List<Interest> to(String team) {
		return this.interests.findAll().stream().filter((interest) -> interest.isOf(team)).toList();
	}

	Interest declare(Official official, Panels.DeclareInterest declared, Actor actor) {
		if (this.interests.existsByOfficialIdAndKindAndTeam(official.id().value(), declared.kind(), declared.team())) {
			throw known();
		}
		Interest interest = new Interest(this.acts.nextId(), declared);
		store(interest);
		this.acts.publish(AuditedChange.of(actor, "official", official.id(), "official.interest-declared")
			.to(words(official, interest)));
		return interest;
	}

	/** Declare the same bond to another name of the team, unless it is there already. */
	void alsoTo(String team, Interest interest, Official official, Actor actor) {
		if (!this.interests.existsByOfficialIdAndKindAndTeam(official.id().value(), interest.kind(), team)) {
			declare(official, new Panels.DeclareInterest(official.id(), interest.kind(), team, interest.lastDay()),
					actor);
		}
	}

	/** The same at one moment: the database lets one through. */
	private void store(Interest interest) {
		try {
			this.interests.saveAndFlush(interest);
		}
		catch (DataIntegrityViolationException ex) {
			throw known();
		}
	}

	private static ConflictException known() {
		return new ConflictException("interest-known", "team", Sentence.of("panels.interest-known"));
	}

	void remove(Official official, InterestView.Id id, Actor actor) {
		Interest interest = this.interests.findById(id.value())
			.filter((one) -> one.official().equals(official.id()))
			.orElseThrow(() -> NotFoundException.of("interest", id));
		this.interests.delete(interest);
		this.acts.publish(AuditedChange.of(actor, "official", official.id(), "official.interest-removed")
			.from(words(official, interest), ""));
	}

	private static String words(Official official, Interest interest) {
		return official.view().name() + ": " + interest.inWords();
	}

}
