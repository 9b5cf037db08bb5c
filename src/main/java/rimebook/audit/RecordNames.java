package rimebook.audit;

import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;

import rimebook.shared.NotFoundException;
import rimebook.shared.SubjectNames;

/** Gives lines of the record the names and the time of the rink that they are about. */
@Service
class RecordNames {

	private final ObjectProvider<SubjectNames> modules;

	private final String configured;

	RecordNames(ObjectProvider<SubjectNames> modules, @Value("${rimebook.zone:}") String configured) {
		this.modules = modules;
		this.configured = configured;
	}

	/** The lines as people read them; each thing is asked for once. */
	public List<ReadableLine> of(List<RecordLine> lines) {
		ZoneId elsewhere = zone();
		Map<String, SubjectNames.Named> names = new HashMap<>();
		return lines.stream()
			.map((line) -> readable(line,
					names.computeIfAbsent(line.thing().subject() + " " + line.thing().subjectId(), (key) -> name(line)),
					elsewhere))
			.toList();
	}

	/**
	 * The zone of lines that are about no rink: the one that was set, else that of the
	 * only rink where something is going on, else that of the machine.
	 */
	public ZoneId zone() {
		if (!this.configured.isBlank()) {
			return ZoneId.of(this.configured);
		}
		return this.modules.stream()
			.flatMap((module) -> module.zone().stream())
			.findFirst()
			.orElseGet(ZoneId::systemDefault);
	}

	private static ReadableLine readable(RecordLine line, SubjectNames.Named name, ZoneId elsewhere) {
		ZoneId zone = name.zone();
		return new ReadableLine(line, name.words(), (zone != null) ? zone : elsewhere);
	}

	/** What is no identity is a name already, such as "any seat". */
	private SubjectNames.Named name(RecordLine line) {
		UUID id;
		try {
			id = UUID.fromString(line.thing().subjectId());
		}
		catch (IllegalArgumentException ex) {
			return SubjectNames.Named.of(line.thing().subjectId());
		}
		return this.modules.stream()
			.flatMap((module) -> name(module, line.thing().subject(), id).stream())
			.findFirst()
			.orElse(SubjectNames.Named.of(""));
	}

	private static Optional<SubjectNames.Named> name(SubjectNames module, String subject, UUID id) {
		try {
			return module.nameOf(subject, id);
		}
		catch (NotFoundException ex) {
			return Optional.empty();
		}
	}

}
