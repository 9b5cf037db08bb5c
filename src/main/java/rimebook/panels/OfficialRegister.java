package rimebook.panels;

import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Component;

import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/** The officials the house knows, each name once, with what they declared. */
@Component
class OfficialRegister {

	private final OfficialRepository officials;

	private final DeclaredInterests interests;

	private final Acts acts;

	OfficialRegister(OfficialRepository officials, DeclaredInterests interests, Acts acts) {
		this.acts = acts;
		this.officials = officials;
		this.interests = interests;
	}

	Official add(DraftOfficial facts, Actor actor) {
		checkName(facts, null);
		Official official = new Official(this.acts.nextId(), facts);
		store(official, facts);
		publish(actor, official, "official.registered", "");
		return official;
	}

	Official change(OfficialView.Id id, int version, DraftOfficial facts, Actor actor) {
		Official official = find(id);
		String before = official.inWords();
		checkName(facts, id);
		official.change(version, facts);
		store(official, facts);
		publish(actor, official, "official.changed", before);
		return official;
	}

	Official find(OfficialView.Id id) {
		return this.officials.findById(id.value()).orElseThrow(() -> NotFoundException.of("official", id));
	}

	List<Official> all() {
		return this.officials.findAllByOrderByName();
	}

	Interest declare(Panels.DeclareInterest declared, Actor actor) {
		return this.interests.declare(find(declared.official()), declared, actor);
	}

	void removeInterest(OfficialView.Id official, InterestView.Id id, Actor actor) {
		this.interests.remove(find(official), id, actor);
	}

	List<Interest> interests(OfficialView.Id official) {
		return this.interests.of(official);
	}

	private void checkName(DraftOfficial facts, OfficialView.@Nullable Id self) {
		this.officials.findByNameIgnoreCase(facts.name())
			.filter((other) -> !other.id().equals(self))
			.ifPresent((other) -> {
				throw known(facts);
			});
	}

	/** The same name twice at one moment: the database lets one through. */
	private void store(Official official, DraftOfficial facts) {
		try {
			this.officials.saveAndFlush(official);
		}
		catch (DataIntegrityViolationException ex) {
			throw known(facts);
		}
	}

	private static ConflictException known(DraftOfficial facts) {
		return new ConflictException("official-known", "name", Sentence.of("panels.official-known", facts.name()));
	}

	private void publish(Actor actor, Official official, String action, String before) {
		this.acts.publish(AuditedChange.of(actor, "official", official.id(), action).from(before, official.inWords()));
	}

}
