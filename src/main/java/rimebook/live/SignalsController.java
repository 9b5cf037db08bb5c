package rimebook.live;

import java.io.IOException;
import java.time.Clock;

import jakarta.servlet.AsyncContext;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/**
 * Opens the stream of signals of a competition. It begins with where everything stands,
 * so that a browser which was away for a while (and says so with {@code Last-Event-ID})
 * needs no more than one that comes for the first time.
 */
@Controller
class SignalsController {

	private final MomentWatch watch;

	private final Followers followers;

	private final Clock clock;

	SignalsController(MomentWatch watch, Followers followers, Clock clock) {
		this.watch = watch;
		this.followers = followers;
		this.clock = clock;
	}

	@GetMapping("/follow/{competition}/signals")
	void follow(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		this.watch.current(competition);
		response.setContentType("text/event-stream;charset=UTF-8");
		response.setHeader("Cache-Control", "no-store");
		response.setHeader("X-Accel-Buffering", "no");
		AsyncContext connection = request.startAsync(request, response);
		Follower follower = this.followers.join(competition, connection);
		follower.tell(this.watch.current(competition).all(), this.clock.instant());
		follower.open();
	}

}
