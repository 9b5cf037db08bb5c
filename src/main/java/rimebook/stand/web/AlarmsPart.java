package rimebook.stand.web;

import java.util.List;

import rimebook.pages.Alarm;

/** What the referee has to know, whatever goes on. */
record AlarmsPart(List<Alarm> alarms) implements LivePart {

	AlarmsPart {
		alarms = List.copyOf(alarms);
	}

}
