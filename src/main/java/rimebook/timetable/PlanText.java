package rimebook.timetable;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import org.springframework.stereotype.Component;
import tools.jackson.databind.cfg.EnumFeature;
import tools.jackson.databind.json.JsonMapper;

import rimebook.timetable.plan.Plan;
import rimebook.timetable.plan.Programmed;

/**
 * Writes plans and published timetables as text and reads them back. Its own mapper, so
 * that no setting of the web layer can change the bytes of what was published.
 */
@Component
class PlanText {

	/** What a record has is written; what it answers is not. */
	private final JsonMapper mapper = JsonMapper.builder()
		.disable(EnumFeature.WRITE_ENUMS_USING_TO_STRING)
		.changeDefaultVisibility((checker) -> checker.withIsGetterVisibility(Visibility.NONE)
			.withGetterVisibility(Visibility.NONE)
			.withFieldVisibility(Visibility.ANY))
		.build();

	String write(Plan plan) {
		return this.mapper.writeValueAsString(plan);
	}

	Plan plan(String body) {
		return this.mapper.readValue(body, Plan.class);
	}

	String write(Programmed timetable) {
		return this.mapper.writeValueAsString(timetable);
	}

	Programmed programmed(String body) {
		return this.mapper.readValue(body, Programmed.class);
	}

}
