package rimebook.standby;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.web.servlet.HandlerInterceptor;

import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/**
 * Refuses what a tablet was given for another service: that of an old day, or of another
 * database into which the same competition was restored. The tablet names with all that
 * it tells the life in which it was put down; what names none comes from no tablet that
 * keeps anything.
 */
final class OfThisService implements HandlerInterceptor {

	private final ServiceLives lives;

	OfThisService(ServiceLives lives) {
		this.lives = lives;
	}

	@Override
	public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
		String life = request.getHeader(LifeHeader.NAME);
		if (life != null && this.lives.known().stream().noneMatch((known) -> known.id().toString().equals(life))) {
			throw refusal();
		}
		return true;
	}

	static ConflictException refusal() {
		return new ConflictException("card-of-another-day", Sentence.of("standby.card-of-another-day"));
	}

}
