package rimebook.standby;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.pages.Alarm;
import rimebook.wording.Sentence;

/**
 * After a start from a copy: how many cards came back, what is still missing, and how
 * many acts are to be done again. Said until nothing is, and for ten minutes at least.
 */
@Component
class ReturnAlarm implements Alarm.Source {

	private static final Duration AT_LEAST = Duration.ofMinutes(10);

	private final LostActs lost;

	private final ServiceLives lives;

	private final Clock clock;

	ReturnAlarm(LostActs lost, ServiceLives lives, Clock clock) {
		this.lost = lost;
		this.lives = lives;
		this.clock = clock;
	}

	@Override
	public Stream<Alarm> alarms() {
		ServiceLife life = this.lives.current();
		ServiceLife.Origin from = life.from();
		if (from == null) {
			return Stream.empty();
		}
		List<LostAct> open = this.lost.all().stream().filter(LostAct::isOpen).toList();
		boolean over = this.clock.instant().isAfter(life.beganAt().plus(AT_LEAST));
		if (open.isEmpty() && over) {
			return Stream.empty();
		}
		return Stream.of(
				from.isByOtherTools()
						? new Alarm(Sentence.of("standby.came-back-blind", this.lost.returned()),
								StandbyConfiguration.PAGE, true)
						: new Alarm(sentence(open), StandbyConfiguration.PAGE, !open.isEmpty()));
	}

	private Sentence sentence(List<LostAct> open) {
		int cards = (int) open.stream().filter(LostAct::isCard).count();
		return Sentence.of("standby.came-back", this.lost.returned(), cards, open.size() - cards);
	}

}
